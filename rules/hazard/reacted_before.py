"""Who has reacted before reacts to less.

What it looks at   an irritating or sensitizing wood that is the one the person reacted to
Why it matters     once sensitized, a person may react severely to very small amounts
What to do         another wood; a physician
Does not apply     woods with no relation to the one that did it
Sources            HSE Woodworking Information Sheet No 30, Toxic woods
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hazard", tier=one_of("T1", "T2"), reacted="same"),
    effect=Effect.ASK_FIRST,
    says="You have reacted to {wood}: {effects}. Very small amounts are enough the next time. Ask a physician.",
    do="Choose another wood, or ask a physician first.",
    opens=("work.material",),
    basis=("hse-wis30",),
)
