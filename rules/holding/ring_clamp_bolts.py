"""A ring clamp's bolts stand out.

What it looks at   a ring clamp
Why it matters     bolts strike knuckles and are out of balance
What to do         even tension, guard, low speed
Does not apply     other holds
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method="ring-clamp-plate", state=one_of("round", "finished")),
    effect=Effect.HOLD_WITH_CARE,
    says="Its bolts stand out to the rim: 500 rpm at most, hands away, tighten evenly.",
)
