"""What holds a blank for a box or hollow form.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "reach",
        family="wood",
        grain=one_of("along", "diagonal", "none"),
        purpose=one_of("box", "hollow-form"),
        state="not-round",
    ),
    effect=Effect.REACH,
    says="An old hand reaches first for a spur drive, then a toothed ring.",
    order=(
        "spur-drive",
        "toothed-ring-drive",
        "long-jaws",
        "jaws-on-tenon",
        "four-jaw-independent",
        "faceplate-screws",
        "two-spur-drive",
    ),
    row=240,
)
