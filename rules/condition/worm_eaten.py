"""Worm holes run on inside.

What it looks at   the condition worm-holes
Why it matters     galleries meet below the surface
What to do         probe, soak with thin resin, hold it in sound wood
Does not apply     a single pin hole in the waste
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", worm_holes="yes"),
    effect=Effect.WITH_CARE,
    says="Worm holes: what shows is less than what is inside. Keep them out of the hold; suction will leak.",
)
