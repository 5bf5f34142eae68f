"""Asthma and a wood that sensitizes the lungs.

What it looks at   the known hazards of this wood against the person and the dust control stated
Why it matters     sensitizing is cumulative and permanent; the wood that was fine for ten years is not fine in the
                   eleventh
What to do         extraction and mask as the tier asks; a physician where lungs are concerned
Does not apply     woods without a known hazard; not being listed is not a clean bill of health
Sources            HSE toxic woods sheet and a secondary list of 1990, as each row of the hazard table says
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hazard", lung="yes", asthma="yes"),
    effect=Effect.ASK_FIRST,
    says="{wood} sensitizes the lungs, and you have asthma: ask your physician before you raise its dust.",
    do="Ask your physician, or choose another wood.",
    opens=("work.material",),
    basis=("hse-wis30",),
)
