"""Sensitizing wood without extraction or mask.

What it looks at   a sensitizing wood with extraction or mask stated absent
Why it matters     sensitizing is cumulative and permanent: the wood that was fine for ten years is not fine in the
                   eleventh
What to do         extraction on and P3 filters, or another wood
Does not apply     mild woods; dust control present
Sources            HSE Woodworking Information Sheet No 30, Toxic woods; a turners' chart of 1990
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hazard", tier="T2", refused="yes", reacted=none_of("same", "near")),
    effect=Effect.ASK_FIRST,
    says="{wood}: {effects}. Not without extraction and a mask.",
    do="It asks for {control}.",
    opens=("person.extraction", "person.respirator"),
    basis=("hse-wis30", "turners-chart-1990"),
)
