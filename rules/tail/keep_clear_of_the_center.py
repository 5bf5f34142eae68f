"""The tool stops short of the center.

What it looks at   any work with the tailstock up
Why it matters     edge, rest or carriage that meets the center spoils both and throws the work
What to do         turn the work a full turn by hand with the tool at the end of its travel
Does not apply     work without the tailstock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, present

rule = Rule(
    when=fact("tail", center=present),
    effect=Effect.NOTE,
    says=(
        "With the tool at the end of its travel turn the work once by hand: rest, tool and carriage stay "
        "{reach} clear of the tail center."
    ),
)
