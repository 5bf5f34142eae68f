"""Work taller than a quarter of the tape peels off.

What it looks at   height over a quarter of the taped diameter
Why it matters     the lever is too long for the width
What to do         more tape, a glue block
Does not apply     wide flats
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, at_most, fact

rule = Rule(
    when=fact("hold", method="double-sided-tape", overhang_ratio=above(0.25), length_mm=at_most(20.0)),
    effect=Effect.REFUSE,
    says="Too tall for so little tape.",
)
