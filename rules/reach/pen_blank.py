"""What holds a pen blank that is not drilled.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("reach", purpose="pen", form=none_of("tube")),
    effect=Effect.REACH,
    says="An old hand reaches first for a collet, then long jaws.",
    order=("collet", "long-jaws", "four-jaw-independent", "square-socket-drive"),
    row=40,
)
