"""What holds a flat disc that nothing sticks to.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact, one_of

rule = Rule(
    when=fact(
        "reach",
        family=one_of(
            "plastic", "laminate", "resin", "hybrid", "animal", "stone", "metal", "plant", "board", "soft", "unknown"
        ),
        sticks="no",
        ratio=below(0.3),
    ),
    effect=Effect.REACH,
    says="An old hand reaches first for clamps on a faceplate, then a friction block.",
    order=("clamped-faceplate", "friction-block", "soft-jaws", "vacuum", "three-jaw"),
    row=110,
)
