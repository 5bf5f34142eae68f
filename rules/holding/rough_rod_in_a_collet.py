"""A rod as bought is seldom round.

What it looks at   a full-circle grip on round stock not yet true
Why it matters     an oval rod is held at two places
What to do         measure across two ways; turn a spigot
Does not apply     turned stock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("collet", "collet-block", "split-bushing", "soft-jaws"),
        state="not-round",
        form=one_of("round", "tube", "ring", "sphere"),
    ),
    effect=Effect.HOLD_WITH_CARE,
    says="Check it is round where it is gripped; turn a true spigot if it is not.",
)
