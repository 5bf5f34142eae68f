"""A blank under 35 mm leaves little over the screws.

What it looks at   thickness between 25 and 35 mm under a faceplate
Why it matters     a point in the cut breaks edges and fingers
What to do         short screws, mark their depth on the rim
Does not apply     thicker blanks
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, all_of, at_least, below, fact

rule = Rule(
    when=fact("hold", method="faceplate-screws", length_mm=all_of(at_least(25.0), below(35.0))),
    effect=Effect.HOLD_WITH_CARE,
    says="Thin for screws: mark where their points are and stay off them.",
)
