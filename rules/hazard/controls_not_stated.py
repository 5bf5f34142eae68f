"""Irritating wood with dust control not stated.

What it looks at   an irritating or sensitizing wood with no word on extraction or mask
Why it matters     a limit value in the air does not make the dust harmless
What to do         extraction on before the first cut, and a mask that fits
Does not apply     dust control stated, present or absent
Sources            HSE Woodworking Information Sheet No 30, Toxic woods; a turners' chart of 1990
"""

from advisor.rulebook import Effect, Rule, fact, none_of, one_of

rule = Rule(
    when=fact("hazard", tier=one_of("T1", "T2"), stated="no", refused="no", reacted=none_of("same", "near")),
    effect=Effect.WITH_CARE,
    says="{wood}: {effects}. It asks for {control}.",
    do="State extraction and mask.",
    opens=("person.extraction", "person.respirator"),
    basis=("hse-wis30", "turners-chart-1990"),
)
