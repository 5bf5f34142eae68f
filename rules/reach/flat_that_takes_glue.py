"""What holds a flat disc of plastic or laminate.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact, none_of, one_of

rule = Rule(
    when=fact(
        "reach",
        family=one_of(
            "plastic", "laminate", "resin", "hybrid", "animal", "stone", "metal", "plant", "board", "soft", "unknown"
        ),
        sticks=none_of("no"),
        ratio=below(0.3),
    ),
    effect=Effect.REACH,
    says="An old hand reaches first for a faceplate on a waste block, then a friction block.",
    order=(
        "waste-block-faceplate",
        "friction-block",
        "double-sided-tape",
        "clamped-faceplate",
        "glue-block",
        "vacuum",
        "soft-jaws",
        "four-jaw-independent",
    ),
    row=100,
)
