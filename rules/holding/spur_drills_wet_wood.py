"""A slipping spur becomes a drill in wet wood.

What it looks at   spurs in wet wood over 5 kg
Why it matters     the wood yields before the motor stalls
What to do         a 50 mm two-spur, or a faceplate
Does not apply     dry or light work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("spur-drive", "two-spur-drive"), wet="yes", mass_kg=above(5.0)),
    effect=Effect.HOLD_WITH_CARE,
    says="Heavy and wet: a slipping spur drills itself in. Two large spurs, seated deep, and tighten often.",
)
