"""Spurs and screws leave holes.

What it looks at   spurs and screws on a finished surface
Why it matters     holes do not come out
What to do         a cup, a friction block, suction, a jam chuck
Does not apply     ends that are cut away
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of(
            "spur-drive", "two-spur-drive", "toothed-ring-drive", "faceplate-screws", "screw-chuck", "pin-chuck"
        ),
        marks="stay",
    ),
    effect=Effect.REFUSE,
    says="Spurs and screws would leave holes in a surface that stays.",
)
