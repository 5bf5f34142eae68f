"""A mild wood, its kin has hurt you, and no dust control.

What it looks at   a mild wood that is kin to one the person reacted to, without dust control stated
Why it matters     it counts one tier higher for this person
What to do         extraction and a P3 mask, or another wood
Does not apply     the same with dust control stated
Sources            HSE Woodworking Information Sheet No 30, Toxic woods
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hazard", tier="T1", reacted="near", stated="no"),
    effect=Effect.ASK_FIRST,
    says="{wood} is kin to a wood you have reacted to: {effects}. Say what extraction and mask you use.",
    do="Fit extraction and a P3 mask, or choose another wood.",
    opens=("person.extraction", "person.respirator"),
    basis=("hse-wis30",),
)
