"""A drive as wide as the end splits its corners off.

What it looks at   the drive's outside diameter against the end of the work
Why it matters     teeth at the edge split corners off, and the tool meets them
What to do         a smaller drive, a quarter to a half of the end
Does not apply     drives well inside the end
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("thrust", drive_share=above(0.85)),
    effect=Effect.WITH_CARE,
    says="The drive ({outer}) is nearly as wide as the end: leave 3 mm of wood outside the teeth.",
    opens=("hold.drive.outer_diameter",),
)
