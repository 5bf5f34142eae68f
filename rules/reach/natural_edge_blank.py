"""What holds a natural-edge blank.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact(
        "reach",
        family="wood",
        grain="across",
        state="not-round",
        live_edge="yes",
        form=none_of("log", "half-log", "slab"),
    ),
    effect=Effect.REACH,
    says="An old hand reaches first for a two-spur drive, then screws on a faceplate.",
    order=("two-spur-drive", "faceplate-screws", "pin-chuck", "spur-drive", "jaws-on-tenon", "screw-chuck"),
    row=145,
)
