"""What holds an ordinary spindle.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact("reach", family="wood", grain=one_of("along", "diagonal", "none"), diameter_mm=above(25.0)),
    effect=Effect.REACH,
    says="An old hand reaches first for a spur drive, then a toothed ring.",
    order=(
        "spur-drive",
        "toothed-ring-drive",
        "square-socket-drive",
        "long-jaws",
        "jaws-on-tenon",
        "cup-drive",
        "two-spur-drive",
    ),
    row=280,
)
