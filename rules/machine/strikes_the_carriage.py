"""A lopsided blank wider than the swing over the carriage strikes it.

What it looks at   the swept diameter against the swing over the carriage, which is far less than over the bed
Why it matters     the carriage has to pass under the work to reach it, and the blow takes hand and slide along
What to do         saw it round and smaller, or use a lathe with a hand rest and no carriage
Does not apply     round work with the carriage locked away
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("machine", carriage_share=above(1.0), state="not-round"),
    effect=Effect.DO_NOT_MOUNT,
    says=(
        "{diameter} out of round does not go over the carriage ({carriage}): it strikes the cross-slide in "
        "the first turn."
    ),
    do="Saw it rounder and smaller, or use a machine without a carriage.",
    hard=True,
    opens=("work.diameter",),
)
