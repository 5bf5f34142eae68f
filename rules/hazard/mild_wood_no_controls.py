"""Mildly irritating wood without extraction or mask.

What it looks at   a mild wood with extraction or mask stated absent
Why it matters     all wood dust is counted among what causes cancer in people
What to do         a mask at least, more for sanding
Does not apply     sensitizing woods, which are asked about; dust control present
Sources            HSE Woodworking Information Sheet No 30, Toxic woods; a turners' chart of 1990; IARC, wood dust in
                   Group 1
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hazard", tier="T1", refused="yes", reacted=none_of("same", "near")),
    effect=Effect.WITH_CARE,
    says="{wood}: {effects}. Work it with {control}.",
    do="Fit a P2 mask and extraction.",
    opens=("person.extraction", "person.respirator"),
    basis=("hse-wis30", "turners-chart-1990", "iarc"),
)
