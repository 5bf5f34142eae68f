"""What holds a finished natural edge while its foot is cleared.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("reach", state="finished", grain="across", live_edge="yes", form=none_of("sphere", "ring", "tube")),
    effect=Effect.REACH,
    says="An old hand reaches first for a friction block, then a jam chuck.",
    order=("friction-block", "jam-chuck", "ring-clamp-plate", "vacuum"),
    row=60,
)
