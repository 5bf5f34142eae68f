"""A dog crushes bare wood.

What it looks at   a dog on wood
Why it matters     the screw crushes the fibers and works loose
What to do         leather or brass pads; tie the tail to the pin
Does not apply     metal and plastic rods
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="driving-dog", family="wood"),
    effect=Effect.HOLD_WITH_CARE,
    says="Pads under the dog's screw, low speed, and a guard: its tail catches sleeves.",
)
