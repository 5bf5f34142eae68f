"""A counterweight is one more piece that can fly.

What it looks at   an uneven blank that walks the lathe first, and the weight that would balance it
Why it matters     its pull grows with the square of speed and its fixing sees all of it
What to do         bolt it through at two places at least, washers and locking nuts, for five times its pull
Does not apply     ends that lean apart, which one weight cannot cure; work that other limits stop first; moved centers
Sources            dynamics; five times its pull and bolts of class 4.6 are from memory
"""

from advisor.rulebook import Effect, Rule, above, at_most, fact

rule = Rule(
    when=fact(
        "speed", state="not-round", walk_share=above(0.8), counterweight_g=above(50.0), couple_share=at_most(0.25)
    ),
    effect=Effect.CHECK,
    says=(
        "If a counterweight, not better centers: {weight} at {weight_radius}, opposite the heavy side and "
        "level with the middle of the piece; fixed for {weight_hold} at {weight_rpm}: {bolts} through bolts of 6 mm or "
        "more with washers and locking nuts, never tape, glue or one screw."
    ),
    basis=("dynamics", "memory"),
)
