"""More than three tenon diameters out of a side-grain tenon levers off.

What it looks at   overhang against tenon diameter, side grain, no tail
Why it matters     the short grain of the tenon snaps
What to do         tailstock, or a larger tenon
Does not apply     work under the tailstock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="jaws-on-tenon", grain="across", tail="away", steady="no", overhang_ratio=above(3.0)),
    effect=Effect.REFUSE,
    says="It stands out more than three tenon diameters with nothing at the far end.",
)
