"""A strong poison or sensitizer, and a body that knows it.

What it looks at   a wood that is asked about anyway, for someone who reacted to it or to its kin
Why it matters     a yes moves a wood up a tier, and above this one there is only never
What to do         another wood
Does not apply     people who have not reacted to it; milder woods
Sources            HSE Woodworking Information Sheet No 30, Toxic woods; a turners' chart of 1990; common practice, no
                   source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hazard", tier="T3", reacted=one_of("same", "near")),
    effect=Effect.DO_NOT_MOUNT,
    says="{wood}: {effects}, and you have reacted to it or its kin. Not by you.",
    do="Choose another wood.",
    opens=("work.material",),
    basis=("hse-wis30", "turners-chart-1990", "common-practice"),
)
