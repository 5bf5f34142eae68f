"""Soft wood takes the teeth from the tailstock.

What it looks at   the force that presses the teeth to depth against what both ends, the bar and the tail center
                   stand
Why it matters     pressed straight in they sit square and nobody hammers
What to do         spindle locked, power off, wind the quill, then back off to the thrust that is to be set
Does not apply     wood in which the pressing would split an end
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact

rule = Rule(
    when=fact("drive", seated="advised", press_over_limit=at_most(1.0)),
    effect=Effect.CHECK,
    says=(
        "Or press the teeth in with the tailstock, power off and spindle locked: about {press}; then back off to {set}."
    ),
)
