"""What holds a ball.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("reach", form="sphere", state=one_of("round", "finished")),
    effect=Effect.REACH,
    says="An old hand reaches first for two soft cups, then a jam chuck.",
    order=("sphere-cups", "jam-chuck", "vacuum"),
    row=10,
)
