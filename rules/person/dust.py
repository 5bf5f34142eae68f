"""Dust is the slow accident.

What it looks at   dry wood, plants and board
Why it matters     wood dust is a carcinogen and a sensitizer; effects build up over years
What to do         extraction on before the first cut, P2 at least, P3 for sanding
Does not apply     wet wood; other materials, which have their own words
Sources            IARC, wood dust in Group 1; common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("person", family=one_of("wood", "plant", "board"), wet="no"),
    effect=Effect.CAUTION,
    says=(
        "Dust: extraction at the tool and a mask that fits, most of all while sanding; no limit value makes it "
        "harmless."
    ),
    basis=("iarc", "common-practice"),
)
