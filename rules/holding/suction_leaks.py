"""Suction leaks through cracks and holes.

What it looks at   suction on cracked, wormy, barky or soft wood
Why it matters     the gauge falls and the piece with it
What to do         seal it with tape or finish and read the gauge with the work on; or another hold
Does not apply     sound wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="vacuum", leaks="yes"),
    effect=Effect.REFUSE,
    says="It leaks: cracks, worm holes, bark, voids or punk let the air through.",
)
