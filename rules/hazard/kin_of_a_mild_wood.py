"""A mild wood for somebody its kin has hurt.

What it looks at   a mild wood of the same genus or with the same allergens as one the person reacted to, dust control
                   stated
Why it matters     it counts one tier higher for this person
What to do         extraction, a half mask with P3 filters, skin covered; stop at the first itch
Does not apply     woods with no relation; dust control absent or not stated, which is asked about
Sources            HSE Woodworking Information Sheet No 30, Toxic woods
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hazard", tier="T1", reacted="near", stated="yes", refused="no"),
    effect=Effect.WITH_CARE,
    says="{wood} is kin to a wood you have reacted to: {effects}. P3, skin covered, stop at the first itch.",
    do="Choose another wood, or wear P3.",
    basis=("hse-wis30",),
)
