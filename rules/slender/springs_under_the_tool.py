"""A bar that springs under the tool chatters.

What it looks at   deflection under 50 N at mid-span over a quarter millimeter
Why it matters     springing makes chatter and chatter makes catches
What to do         steady, or less length between supports
Does not apply     stiff work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("slender", tool="hand", deflection_mm=above(0.25)),
    effect=Effect.CHECK,
    says="It springs {deflection} under the tool: lighter cuts, a sharper edge, your hand or a steady behind it.",
)
