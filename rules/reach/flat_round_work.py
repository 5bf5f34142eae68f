"""What holds flat round side-grain work.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact, one_of

rule = Rule(
    when=fact("reach", family="wood", grain="across", state=one_of("round", "finished"), ratio=at_most(1 / 6)),
    effect=Effect.REACH,
    says="An old hand reaches first for jaws in a recess, then a screw chuck.",
    order=(
        "jaws-in-recess",
        "screw-chuck",
        "faceplate-screws",
        "jaws-on-tenon",
        "waste-block-faceplate",
        "glue-block",
        "vacuum",
        "double-sided-tape",
    ),
    row=200,
)
