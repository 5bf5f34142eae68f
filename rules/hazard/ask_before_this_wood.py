"""Poisonous woods and the strongest sensitizers are asked about first.

What it looks at   woods whose dust reaches the heart or stays in the body
Why it matters     a mask that leaks is enough
What to do         ask a physician, or choose another wood
Does not apply     milder woods; people who reacted to it, who leave it
Sources            HSE Woodworking Information Sheet No 30, Toxic woods; a turners' chart of 1990
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hazard", tier="T3", reacted=none_of("same", "near")),
    effect=Effect.ASK_FIRST,
    says="{wood}: {effects}. A mask alone is not enough: {control}.",
    do="Choose another wood, or ask a physician and use extraction and a powered hood.",
    opens=("work.material",),
    basis=("hse-wis30", "turners-chart-1990"),
)
