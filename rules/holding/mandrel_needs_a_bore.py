"""A mandrel goes through a bore.

What it looks at   a mandrel for solid work
Why it matters     it has to go through
What to do         drill it first, or another hold
Does not apply     tubes and rings
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hold", method="mandrel", form=none_of("tube", "ring")),
    effect=Effect.REFUSE,
    says="There is no bore for a mandrel.",
)
