"""What holds a thin flat disc of wood.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact, none_of

rule = Rule(
    when=fact(
        "reach",
        family="wood",
        grain="across",
        length_mm=at_most(20.0),
        diameter_mm=at_most(200.0),
        purpose=none_of("bowl", "platter"),
    ),
    effect=Effect.REACH,
    says="An old hand reaches first for double-sided tape, then a glue block.",
    order=(
        "double-sided-tape",
        "glue-block",
        "waste-block-faceplate",
        "vacuum",
        "friction-block",
        "jam-chuck",
        "paper-joint",
        "clamped-faceplate",
        "screw-chuck",
    ),
    row=130,
)
