"""Outboard work swings where nobody expects it.

What it looks at   work mounted outboard
Why it matters     a stop that has to be reached across the swing is no stop
What to do         a remote stop, a floor-standing rest that is bolted, a barrier
Does not apply     inboard work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("machine", outboard="yes"),
    effect=Effect.ASK_FIRST,
    says=(
        "Outboard turning: no tailstock, no guard, and the switch on the wrong side. Can you stop it without "
        "reaching across?"
    ),
    do="Fit a remote stop and a barrier, then go by the speed answer.",
    opens=("hold.outboard",),
)
