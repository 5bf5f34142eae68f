"""Kin of the wood that did it share its allergens.

What it looks at   a sensitizing wood of the same genus, or with the same allergens, as one the person reacted to
Why it matters     cross reactions happen: what is true of one rosewood is true of most
What to do         another wood; a physician
Does not apply     woods with no relation to the one that did it; mild woods
Sources            HSE Woodworking Information Sheet No 30, Toxic woods
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hazard", tier="T2", reacted="near"),
    effect=Effect.ASK_FIRST,
    says="{wood} is kin to a wood you have reacted to: {effects}. Ask a physician first.",
    do="Choose another wood, or ask a physician first.",
    opens=("work.material",),
    basis=("hse-wis30",),
)
