"""What holds stone, horn, bone, shell and rough resin.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("reach", family=one_of("stone", "animal", "resin", "hybrid")),
    effect=Effect.REACH,
    says="An old hand reaches first for a glue block, then a faceplate on a waste block.",
    order=("glue-block", "waste-block-faceplate", "keyed-stud", "four-jaw-independent", "soft-jaws"),
    row=90,
)
