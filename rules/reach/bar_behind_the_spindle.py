"""What holds a bar that stands out behind the spindle.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("reach", rear_mm=above(0.0)),
    effect=Effect.REACH,
    says="An old hand reaches first for the bore of the spindle, then a collet.",
    order=("through-spindle", "collet", "three-jaw"),
    row=80,
)
