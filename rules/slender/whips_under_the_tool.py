"""A long thin piece bows away from a hand tool.

What it looks at   free length over fifteen of the thinnest diameter, hand tools
Why it matters     it chatters in a spiral, climbs the tool and breaks
What to do         a rolling steady on a trued band; work from the tail toward the headstock
Does not apply     short work; work with a steady
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("slender", tool="hand", ratio=above(15.0), steady="no", grain="along"),
    effect=Effect.WITH_CARE,
    says="It is {ratio} diameters long: a steady, or your hand behind the work, light cuts with a fresh edge.",
)
