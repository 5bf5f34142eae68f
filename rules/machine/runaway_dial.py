"""A dial that can pass any safe rim speed will one day be found there.

What it looks at   the diameter times the highest speed the machine has
Why it matters     a slab run up by a control left at yesterday's setting bursts in a second
What to do         choose the belt step or range that cannot reach it
Does not apply     machines that cannot go that fast
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("machine", runaway=above(13500.0)),
    effect=Effect.CAUTION,
    says=(
        "Dial or belt can run it to {top}: set the belt or the range so that it cannot pass {safe_top}, the most for "
        "this size even when finished, and look at the setting before the switch."
    ),
)
