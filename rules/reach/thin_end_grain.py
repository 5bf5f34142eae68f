"""What holds end-grain work to 25 mm.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact, one_of

rule = Rule(
    when=fact("reach", family="wood", grain=one_of("along", "diagonal", "none"), diameter_mm=at_most(25.0)),
    effect=Effect.REACH,
    says="An old hand reaches first for a toothed ring, then a square socket.",
    order=(
        "toothed-ring-drive",
        "square-socket-drive",
        "spur-drive",
        "collet",
        "jaws-on-tenon",
        "cup-drive",
        "point-and-pin-drive",
        "long-jaws",
    ),
    row=270,
)
