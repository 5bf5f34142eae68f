"""No hold is better than the wood in it.

What it looks at   screws and jaws in spalted, punky or rotten wood
Why it matters     the hold tears out with a lump
What to do         cut back, soak and cure, or a glue block over hard wood
Does not apply     sound wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", group=one_of("screwed", "jawed"), soft="yes"),
    effect=Effect.HOLD_WITH_CARE,
    says="Only in sound wood: test it with a thumbnail where it is held.",
)
