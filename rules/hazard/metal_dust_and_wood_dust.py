"""Metal chips and wood dust never share a bag.

What it looks at   metal on the lathe
Why it matters     a hot chip in wood dust smolders for hours and then burns the shop; light metal with rust burns
                   hotter than either
What to do         sweep and vacuum the wood out first, a bag of its own for metal, extraction off
Does not apply     other materials
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("shop", family="metal"),
    effect=Effect.CAUTION,
    says=(
        "Metal chips and wood dust never in one bag, tray or heap: clear out the wood first, and keep the wood "
        "extraction off."
    ),
)
