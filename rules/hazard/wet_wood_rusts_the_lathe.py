"""Wet wood rusts bright iron in hours.

What it looks at   wet or green wood on the lathe
Why it matters     sap and tannin, most of all of oak, etch slideways and chucks
What to do         wipe dry and oil before you go home, chuck included
Does not apply     dry wood; other materials
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("shop", family="wood", wet="yes"),
    effect=Effect.CHECK,
    says="Wet wood, oak most of all, rusts iron in hours: wipe the lathe and the chuck dry and oil them the same day.",
)
