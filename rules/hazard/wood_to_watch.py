"""A sensitizing wood with dust control in place.

What it looks at   a sensitizing wood with extraction and mask stated
Why it matters     the body keeps count even so
What to do         P3 filters, skin covered, wash after, stop at the first sign
Does not apply     mild woods; people who reacted to it or its kin
Sources            HSE Woodworking Information Sheet No 30, Toxic woods; a turners' chart of 1990
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hazard", tier="T2", stated="yes", refused="no", reacted=none_of("same", "near")),
    effect=Effect.WITH_CARE,
    says="{wood}: {effects}. It asks for {control}; watch skin and breath, and wash after.",
    basis=("hse-wis30", "turners-chart-1990"),
)
