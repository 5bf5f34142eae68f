"""A split bushing takes rod to 75 mm.

What it looks at   work diameter in a split bushing
Why it matters     it does not go in, or grips by its edge
What to do         another hold
Does not apply     work that fits
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="split-bushing", diameter_mm=above(75.0)),
    effect=Effect.REFUSE,
    says="Too large: it takes work to 75 mm.",
)
