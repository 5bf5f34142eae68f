"""Even ordinary dust and fume is drawn off.

What it looks at   a material that asks for extraction but no P3 filter, with extraction stated absent
Why it matters     fume and dust gather in a closed shop
What to do         extraction, or an open door and a pause
Does not apply     fine dusts, which are asked about; extraction present
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("need", token="extraction", extraction="no", mask=one_of("P2", "none")),
    effect=Effect.WITH_CARE,
    says="{title} without extraction: open the door, cut cool, and stop when it smells.",
    do="Fit extraction at the tool.",
    opens=("person.extraction",),
)
