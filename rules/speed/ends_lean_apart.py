"""Two ends that are heavy on opposite sides shake even when the whole balances.

What it looks at   radii at both ends: the part that turns the piece over against the part both share
Why it matters     one counterweight cannot cure it, and a test with the spindle free does not show it
What to do         move the center at each end by itself
Does not apply     ends that lean the same way; work measured at one end
Sources            ISO 21940-11:2016, static and couple unbalance; common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("speed", couple_share=above(0.25)),
    effect=Effect.NOTE,
    says="The two ends lean apart: move the center of each end by itself; one counterweight cannot cure it.",
    basis=("iso-21940-11", "common-practice"),
)
