"""Soft jaws are bored for work to 150 mm.

What it looks at   work diameter in a soft jaws
Why it matters     it does not go in, or grips by its edge
What to do         another hold
Does not apply     work that fits
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="soft-jaws", diameter_mm=above(150.0)),
    effect=Effect.REFUSE,
    says="Too large: it takes work to 150 mm.",
)
