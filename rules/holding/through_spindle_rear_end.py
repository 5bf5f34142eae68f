"""The rear of a bar through the spindle must be carried.

What it looks at   a bar through the spindle
Why it matters     an unsupported tail whips and bends square
What to do         plug, spider, tube, barrier
Does not apply     short work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, fact

rule = Rule(
    when=fact("hold", method="through-spindle", ratio=at_least(3.0)),
    effect=Effect.HOLD_WITH_CARE,
    says="Carry and center the rear end in a tube or spider before the switch.",
)
