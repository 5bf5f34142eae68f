"""Rags with oil finish heat themselves.

What it looks at   finishing wood
Why it matters     drying oil warms in a crumpled rag until it burns, hours later
What to do         rags flat outdoors or under water in a lidded can; paper towel on the lathe, never cloth
Does not apply     cutting; other materials
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("shop", family="wood", operation="finishing"),
    effect=Effect.CAUTION,
    says=(
        "Finish with paper towel, never cloth, and lay oily rags flat outdoors or under water: crumpled, they set"
        " themselves alight."
    ),
)
