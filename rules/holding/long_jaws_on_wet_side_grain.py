"""Serrated jaws on wet side grain ask for care.

What it looks at   long jaws on wet side grain
Why it matters     they bite, and the wood shrinks from them
What to do         tighten at every stop
Does not apply     end grain
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="long-jaws", grain="across", wet="yes", family="wood"),
    effect=Effect.HOLD_WITH_CARE,
    says="Serrated jaws on wet side grain: tighten often.",
)
