"""What holds a bar too long for the bed that goes through the bore.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, at_most, fact

rule = Rule(
    when=fact("reach", bore_share=at_most(1.0), bed_share=above(1.0)),
    effect=Effect.REACH,
    says="An old hand reaches first for the bore of the spindle, then a collet.",
    order=("through-spindle", "collet", "three-jaw"),
    row=84,
)
