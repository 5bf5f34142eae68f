"""Clamps and bolts sweep round.

What it looks at   clamps on a plate
Why it matters     they loosen, catch and unbalance
What to do         stop pins, check twice, low speed
Does not apply     other holds
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="clamped-faceplate", ratio=below(0.3)),
    effect=Effect.HOLD_WITH_CARE,
    says="Clamps and bolts sweep round: balance them, 400 rpm at most, pins to take the drive.",
)
