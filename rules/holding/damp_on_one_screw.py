"""Small wet work on one screw asks for care.

What it looks at   a screw chuck in green wood up to 200 mm
Why it matters     wet threads hold half
What to do         tailstock up
Does not apply     dry work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact

rule = Rule(
    when=fact("hold", method="screw-chuck", wet="yes", diameter_mm=at_most(200.0)),
    effect=Effect.HOLD_WITH_CARE,
    says="Wet wood on one screw: tailstock up, tighten often.",
)
