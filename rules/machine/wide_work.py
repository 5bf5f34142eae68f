"""Work above 18 in carries enough to kill.

What it looks at   work above 18 in on a machine that was described
Why it matters     its energy at walking pace is that of a dropped anvil
What to do         two people to mount it, remote stop, lowest speed
Does not apply     smaller work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, at_least, fact

rule = Rule(
    when=fact("machine", diameter_mm=above(457.2), told=at_least(3)),
    effect=Effect.WITH_CARE,
    says="Large work: a hoist to mount it, nobody in the plane of it, the stop within reach without crossing it.",
)
