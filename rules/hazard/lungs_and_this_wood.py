"""Asthma and a wood that sensitizes the lungs.

What it looks at   asthma with a wood on record as a lung sensitizer
Why it matters     an attack can come hours after the dust, at night
What to do         another wood; the physician
Does not apply     woods not on record for the lungs; people without asthma
Sources            HSE Woodworking Information Sheet No 30, Toxic woods; Hazardous Substances Data Bank, western red
                   cedar
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hazard", lung="yes", asthma="yes"),
    effect=Effect.ASK_FIRST,
    says="{wood} sensitizes the lungs, and you have asthma: ask your physician before you raise its dust.",
    do="Ask your physician, or choose another wood.",
    opens=("work.material",),
    basis=("hse-wis30", "hsdb-red-cedar"),
)
