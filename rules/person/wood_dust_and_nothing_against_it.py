"""Dry wood with neither extraction nor mask.

What it looks at   dry wood with extraction and mask both stated absent
Why it matters     all wood dust is counted among what causes cancer in people
What to do         a mask at least, and the door open
Does not apply     either of them present; wet wood; other materials
Sources            IARC, wood dust in Group 1
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("person", family=one_of("wood", "plant", "board"), wet="no", extraction="no", respirator="none"),
    effect=Effect.WITH_CARE,
    says="Dry wood with neither extraction nor mask: wood dust causes cancer and asthma. A mask at least.",
    do="Wear a P2 mask at least.",
    opens=("person.extraction", "person.respirator"),
    basis=("iarc",),
)
