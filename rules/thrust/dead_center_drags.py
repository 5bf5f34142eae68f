"""A dead center can drag harder than the drive turns.

What it looks at   the torque of the drive per newton against the drag of the dead center
Why it matters     more thrust only makes more heat
What to do         a live center, or seated teeth
Does not apply     live centers
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("thrust", turns="no"),
    effect=Effect.ASK_FIRST,
    says="This drive cannot turn this dead center: its drag grows with the thrust as fast as the drive does.",
    do="Use a live center.",
    window="empty",
    opens=("hold.tail.kind",),
)
