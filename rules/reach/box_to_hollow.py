"""What holds a box or hollow form to be hollowed.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "reach",
        family="wood",
        grain=one_of("along", "diagonal", "none"),
        purpose=one_of("box", "hollow-form"),
        state=one_of("round", "finished"),
    ),
    effect=Effect.REACH,
    says="An old hand reaches first for jaws on a tenon, then long jaws.",
    order=(
        "jaws-on-tenon",
        "long-jaws",
        "faceplate-screws",
        "waste-block-faceplate",
        "collet",
        "soft-jaws",
        "glue-block",
    ),
    row=250,
)
