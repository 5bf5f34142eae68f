"""A paper joint is for low work.

What it looks at   length over half the joint
Why it matters     the lever peels it
What to do         a plain glue block
Does not apply     low work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="paper-joint", overhang_ratio=above(0.5)),
    effect=Effect.NOT_ADVISED,
    says="Too tall for a paper joint.",
)
