"""The centers belong on the middle of the mass.

What it looks at   how far the middle of the mass was found from the axis, by radii, by a balance test or by shape
Why it matters     speed rises with the root of the offset taken away, and nothing has to be fixed to the piece
What to do         move the centers toward the heavy side and measure again
Does not apply     round work; an offset that was only guessed
Sources            geometry; common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("speed", move_mm=above(1.0)),
    effect=Effect.NOTE,
    says="Move the centers: {moves}. Then measure again, and turn it by hand: it may sweep wider.",
    basis=("geometry", "common-practice"),
)
