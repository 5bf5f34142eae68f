"""A short measured crack asks for low speed and a watchful eye.

What it looks at   a crack that was measured and is short
Why it matters     it may run while the wall gets thinner
What to do         wick thin glue into it, let it cure, bind the piece outside the cut, stop often
Does not apply     sound wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact

rule = Rule(
    when=fact("blank", crack="yes", crack_across_share=at_most(1 / 3)),
    effect=Effect.WITH_CARE,
    says="A crack of known size: low speed, bind it where you can, look at it at every stop.",
)
