"""What holds a tube or a drilled pen.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("reach", form="tube"),
    effect=Effect.REACH,
    says="An old hand reaches first for a mandrel, then a collet.",
    order=("mandrel", "collet", "soft-jaws", "jam-chuck"),
    row=30,
)
