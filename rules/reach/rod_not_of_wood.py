"""What holds a rod that is not wood.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, fact, one_of

rule = Rule(
    when=fact(
        "reach",
        family=one_of(
            "plastic", "laminate", "resin", "hybrid", "animal", "stone", "metal", "plant", "board", "soft", "unknown"
        ),
        ratio=at_least(0.3),
    ),
    effect=Effect.REACH,
    says="An old hand reaches first for a collet, then soft jaws.",
    order=("collet", "soft-jaws", "split-bushing", "four-jaw-independent", "three-jaw", "driving-dog"),
    row=120,
)
