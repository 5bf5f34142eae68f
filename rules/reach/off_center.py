"""What holds off-center work.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("reach", offset_share=above(0.1)),
    effect=Effect.REACH,
    says="An old hand reaches first for an offset faceplate, then an independent four-jaw chuck.",
    order=("offset-faceplate", "four-jaw-independent", "spur-drive"),
    row=70,
)
