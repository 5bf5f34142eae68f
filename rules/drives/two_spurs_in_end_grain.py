"""A two-spur blade in end grain is a splitting wedge.

What it looks at   a two-spur drive in end grain
Why it matters     both spurs lie in one line and pull the same two halves apart
What to do         lay the blade across the line in which this wood splits, never along a check or the line
                   through the pith
Does not apply     side grain, four teeth, rings
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("drive", drive="two", grain=none_of("across")),
    effect=Effect.CHECK,
    says=(
        "Lay the two spurs across the growth rings' weak line, never along a check or through the pith: in "
        "line they split it."
    ),
)
