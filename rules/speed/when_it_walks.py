"""When the lathe walks or rocks, the switch is the only tool.

What it looks at   an uneven piece whose ceiling comes within reach of the speed at which the lathe walks
Why it matters     a rocking lathe grows worse by itself, and people hold on to it or speed up to get through
What to do         tool away, switch off, stay out of its plane, wait until it stands; then saw, move or slow down
Does not apply     round work and light work on a heavy lathe
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("speed", state="not-round", walk_share=above(0.6)),
    effect=Effect.NOTE,
    says=(
        "Know before you switch on: if it walks, rocks or hums, take the tool away, switch off, stay out of its plane "
        "and let it run down. Do not hold the lathe and do not speed up to get through. Then half the speed, or saw it "
        "rounder, move the centers, ballast or bolt the lathe."
    ),
)
