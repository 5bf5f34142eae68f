"""What holds a bowl while it is hollowed.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact(
        "reach",
        family="wood",
        grain="across",
        state=one_of("round", "finished"),
        operation="hollowing",
        ratio=above(1 / 6),
    ),
    effect=Effect.REACH,
    says="An old hand reaches first for jaws on a tenon, then jaws in a recess.",
    order=(
        "jaws-on-tenon",
        "jaws-in-recess",
        "faceplate-screws",
        "waste-block-faceplate",
        "glue-block",
        "screw-chuck",
        "long-jaws",
    ),
    row=210,
)
