"""A dog grips round stock.

What it looks at   a dog on stock that is not round
Why it matters     the screw slides on a corner
What to do         a square socket or spurs
Does not apply     round rods
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hold", method="driving-dog", form=none_of("round", "tube")),
    effect=Effect.NOT_ADVISED,
    says="A dog grips round stock; a square drives in a socket.",
)
