"""Oily dust and rags heat themselves.

What it looks at   the condition oily
Why it matters     glue fails on it, it checks when hot, and oily rags have burnt shops down
What to do         epoxy after a solvent wipe; rags spread flat or in a lidded can with water
Does not apply     dry woods
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", oily="yes"),
    effect=Effect.CAUTION,
    says=(
        "Oily wood: wipe glue faces with solvent, stop before it gets hot, and lay rags flat outside or under water."
    ),
)
