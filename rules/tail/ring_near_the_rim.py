"""A cup near the rim breaks it out.

What it looks at   the diameter of the cup against the end, above four fifths
Why it matters     there is no wood outside the ring to hold what it pushes aside
What to do         a cup of at most 0.6 of the end
Does not apply     smaller cups, points
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("tail", ring_share=above(0.8)),
    effect=Effect.WITH_CARE,
    says=(
        "The cup at the tail is nearly as wide as the end ({end}): it breaks the rim out. Take one of six "
        "tenths of the end or less."
    ),
    do="Take a smaller cup.",
    opens=("hold.tail.cup_diameter",),
)
