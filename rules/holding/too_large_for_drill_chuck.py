"""A drill chuck holds only what fits in it.

What it looks at   work diameter in a drill chuck
Why it matters     it does not go in, or grips by its edge
What to do         another hold
Does not apply     work that fits
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="drill-chuck", diameter_mm=above(12.0)),
    effect=Effect.REFUSE,
    says="Too large: it takes work to 12 mm.",
)
