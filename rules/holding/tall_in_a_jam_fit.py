"""Tall work rocks out of a jam fit.

What it looks at   work taller than one and a half diameters in a jam chuck
Why it matters     it rocks loose
What to do         tailstock, jaws
Does not apply     low work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="jam-chuck", ratio=above(1.5)),
    effect=Effect.NOT_ADVISED,
    says="Too tall for a jam fit.",
)
