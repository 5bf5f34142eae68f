"""What holds work that is meant to run off center.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("reach", planned="offset-faceplate"),
    effect=Effect.REACH,
    says="An old hand reaches first for an offset faceplate, then an independent four-jaw chuck.",
    order=("offset-faceplate", "four-jaw-independent", "spur-drive"),
    row=72,
)
