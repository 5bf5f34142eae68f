"""Large work on a pin asks for care.

What it looks at   work over 300 mm on a pin chuck
Why it matters     the hole opens
What to do         tailstock up, low speed
Does not apply     smaller work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="pin-chuck", diameter_mm=above(300.0)),
    effect=Effect.HOLD_WITH_CARE,
    says="Large for a pin: watch the hole.",
)
