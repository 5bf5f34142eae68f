"""Tall work peels off tape.

What it looks at   work over 20 mm on tape
Why it matters     tape holds in shear and peels from the edge
What to do         a glue block
Does not apply     thin flats
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="double-sided-tape", length_mm=above(20.0)),
    effect=Effect.REFUSE,
    says="Over 20 mm tall: it peels off the tape.",
)
