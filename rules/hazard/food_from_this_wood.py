"""Food and toys from a sensitizing wood.

What it looks at   the known hazards of this wood against the person and the dust control stated
Why it matters     sensitizing is cumulative and permanent; the wood that was fine for ten years is not fine in the
                   eleventh
What to do         extraction and mask as the tier asks; a physician where lungs are concerned
Does not apply     woods without a known hazard; not being listed is not a clean bill of health
Sources            HSE toxic woods sheet and a secondary list of 1990, as each row of the hazard table says
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hazard", tier=one_of("T2", "T3"), use=one_of("food", "toy")),
    effect=Effect.ASK_FIRST,
    says="{wood} for food or toys: {effects}. Choose another wood.",
    do="Choose a wood without known effects.",
    opens=("work.material",),
    basis=("hse-wis30",),
)
