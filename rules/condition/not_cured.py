"""Resin and glue that are not cured let go and make people ill.

What it looks at   the condition uncured
Why it matters     heat from the cut softens it, and the dust sensitizes skin and lungs
What to do         wait out the full cure of the slowest part, test a spare piece with a thumbnail and a chisel
Does not apply     cured resin and glue
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", uncured="yes"),
    effect=Effect.DO_NOT_MOUNT,
    says="It is not fully cured: the joint lets go warm, and uncured resin dust makes people allergic for life.",
    do="Wait out the full cure, try a spare piece, then ask again.",
    opens=("work.condition",),
)
