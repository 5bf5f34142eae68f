"""Chips that burn and sparks that wander.

What it looks at   materials whose chips or fumes must meet no spark
Why it matters     a grinder across the room is near enough
What to do         nothing that grinds, welds or smokes while it is cut, and no shared bag
Does not apply     materials that do not burn; metal in the piece, which is refused
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="sparks", sparks="unknown"),
    effect=Effect.CHECK,
    says=(
        "Before the first cut: no grinder, no flame, no smoking and no shared dust bag anywhere near, and the "
        "chips of the last job swept out."
    ),
)
