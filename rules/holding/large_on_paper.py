"""A paper joint is for small work.

What it looks at   work over 200 mm on paper
Why it matters     peel grows with size
What to do         a plain glue block
Does not apply     work to 200 mm
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="paper-joint", diameter_mm=above(200.0)),
    effect=Effect.NOT_ADVISED,
    says="Too large for a paper joint.",
)
