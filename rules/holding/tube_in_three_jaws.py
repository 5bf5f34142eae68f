"""Three jaws crush a tube.

What it looks at   a tube in a three-jaw
Why it matters     three points bend a ring
What to do         a mandrel, a collet, soft jaws, a plug inside
Does not apply     solid rods
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="three-jaw", form="tube"),
    effect=Effect.REFUSE,
    says="Three jaws crush a bare tube or leave it three-lobed.",
)
