"""A paper joint is for light work.

What it looks at   work over 2 kg on paper
Why it matters     peel grows with weight
What to do         a plain glue block
Does not apply     work to 2 kg
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="paper-joint", mass_kg=above(2.0)),
    effect=Effect.NOT_ADVISED,
    says="Too heavy for a paper joint.",
)
