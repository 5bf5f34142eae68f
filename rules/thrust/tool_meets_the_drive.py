"""A drive wider than the finished end is cut by the tool.

What it looks at   the drive's outside diameter against the thinnest finished diameter
Why it matters     the edge runs onto hardened teeth
What to do         leave a waste stub at the drive, or a smaller drive
Does not apply     drives under the finished size
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("thrust", finished_share=above(1.0)),
    effect=Effect.CAUTION,
    says=(
        "The drive ({outer}) is wider than the finished size near it ({finished}): stop short of it or take a"
        " smaller drive. The tool pays."
    ),
)
