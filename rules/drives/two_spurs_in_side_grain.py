"""Two spurs in side grain: both ways are in use.

What it looks at   a two-spur drive in side grain
Why it matters     accounts disagree whether the blade goes across or along the fibers
What to do         bed both spurs in sound wood to the same depth; choose by what the face offers
Does not apply     end grain, other drives
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("drive", drive="two", grain="across"),
    effect=Effect.CHECK,
    says=(
        "Seat both spurs {depth} deep in sound wood, equally deep. Some lay the blade across the fibers, some"
        " along them: both are in use."
    ),
)
