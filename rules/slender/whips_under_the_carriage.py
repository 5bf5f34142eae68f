"""A toolpost tool does not give way to a bending bar.

What it looks at   free length over ten of the thinnest diameter, toolpost
Why it matters     the bar springs, the tool digs and the end is thicker than the middle
What to do         steady with rollers or waxed hardwood fingers; sharp tool, small nose
Does not apply     short work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("slender", tool="carriage", ratio=above(10.0), steady="no", grain="along"),
    effect=Effect.WITH_CARE,
    says="It is {ratio} diameters long under a toolpost tool: a traveling or fixed steady.",
)
