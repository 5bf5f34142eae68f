"""Tubes, rings and balls have no end for a tenon or screws.

What it looks at   holds that need a solid end on a tube, ring or ball
Why it matters     there is nothing behind the surface
What to do         a mandrel, jam chuck, cups
Does not apply     solid work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        form=one_of("tube", "ring", "sphere"),
        method=one_of(
            "jaws-on-tenon",
            "jaws-in-recess",
            "long-jaws",
            "faceplate-screws",
            "screw-chuck",
            "pin-chuck",
            "spur-drive",
            "two-spur-drive",
            "toothed-ring-drive",
            "cup-drive",
            "point-and-pin-drive",
        ),
    ),
    effect=Effect.REFUSE,
    says="There is no end on it for this hold.",
)
