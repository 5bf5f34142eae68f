"""A slim mandrel whips over 150 mm.

What it looks at   work over 150 mm on a mandrel
Why it matters     a tight nut bows it
What to do         shorter pieces, finger-tight nut, a thicker mandrel
Does not apply     short work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="mandrel", length_mm=above(150.0)),
    effect=Effect.HOLD_WITH_CARE,
    says="Long for a slim mandrel: it whips and bows when the nut is tight.",
)
