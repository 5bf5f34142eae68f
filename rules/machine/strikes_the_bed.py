"""A blank wider than the swing strikes the bed.

What it looks at   the largest swept diameter against the swing over the bed
Why it matters     it cannot turn once round
What to do         saw it smaller, or turn it outboard or on another machine
Does not apply     work inside the swing
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("machine", swing_share=above(1.0)),
    effect=Effect.DO_NOT_MOUNT,
    says="{diameter} does not go over the bed: the swing is {swing}.",
    do="Saw it smaller or use a larger machine.",
    opens=("work.diameter",),
)
