"""Rotten wood has no strength to hold on to.

What it looks at   the condition rot
Why it matters     screws, jaws and glue pull out without warning
What to do         cut back to wood that a thumbnail does not mark; then give the case again
Does not apply     spalted wood that is still hard
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", rot="yes"),
    effect=Effect.ASK_FIRST,
    says="Rot in it: nothing holds in rotten wood, and its dust is full of spores.",
    do="Cut back to wood that a thumbnail does not dent.",
    opens=("work.condition",),
)
