"""Food and toys from a sensitizing wood.

What it looks at   food or toy as the use, with a wood on record as a sensitizer or poison
Why it matters     it is licked, chewed and washed warm for years
What to do         a wood without such a record, and ask whoever will use it what they react to
Does not apply     other uses; woods without such a record
Sources            HSE Woodworking Information Sheet No 30, Toxic woods; a turners' chart of 1990
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hazard", troubling="yes", use=one_of("food", "toy")),
    effect=Effect.ASK_FIRST,
    says="{wood} for food or toys: {effects}. Choose another wood, or ask whoever will use it first.",
    do="Choose a wood without such effects on record.",
    opens=("work.material", "work.use"),
    basis=("hse-wis30", "turners-chart-1990"),
)
