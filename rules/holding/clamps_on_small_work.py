"""Clamps need room.

What it looks at   work to 75 mm under clamps
Why it matters     the clamps cover the work
What to do         jaws or glue
Does not apply     plates and discs
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact

rule = Rule(
    when=fact("hold", method="clamped-faceplate", diameter_mm=at_most(75.0)),
    effect=Effect.REFUSE,
    says="Too small for clamps on a plate.",
)
