"""Water feeds a metal fire.

What it looks at   metal that burns, with a water extinguisher
Why it matters     it splits the water and burns on its gas
What to do         class D powder or dry sand
Does not apply     metal that does not burn; other extinguishers
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("shop", family="metal", burns="yes", extinguisher="water"),
    effect=Effect.CAUTION,
    says="Never water on burning {thing}: class D powder or dry sand.",
)
