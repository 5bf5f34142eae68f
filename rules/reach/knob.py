"""What holds a knob.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact, one_of

rule = Rule(
    when=fact(
        "reach", family="wood", grain=one_of("along", "diagonal", "none"), purpose="knob", diameter_mm=at_most(75.0)
    ),
    effect=Effect.REACH,
    says="An old hand reaches first for a screw chuck, then jaws on a tenon.",
    order=("screw-chuck", "jaws-on-tenon", "long-jaws", "spur-drive", "collet", "pin-chuck", "glue-block"),
    row=230,
)
