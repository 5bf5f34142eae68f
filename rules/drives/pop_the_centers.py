"""A point finds a popped mark.

What it looks at   work between centers that a point, teeth or a ring drives
Why it matters     an unmarked point wanders off the center while it is pressed in
What to do         mark both ends, pop the marks, drill for the point in hard wood
Does not apply     work in chucks and between pads
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("drive", drive=one_of("four", "two", "ring", "cup", "point")),
    effect=Effect.CHECK,
    says=(
        "Mark the center of both ends and pop the marks with an awl or punch, so that the points find them; "
        "in hard wood, and in anything that a punch would crack, drill for the point."
    ),
)
