"""Ring shake parts the wood along a growth ring.

What it looks at   the condition ring-shake
Why it matters     the parting runs round inside where nobody sees its end
What to do         cut it up for small sound pieces
Does not apply     checks from the end, which run the other way
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", ring_shake="yes"),
    effect=Effect.DO_NOT_MOUNT,
    says="Ring shake: the rings have let go of one another and the inside will come out of the outside.",
    do="Cut it up; turn only pieces with no part of the ring in them.",
    opens=("work.condition",),
)
