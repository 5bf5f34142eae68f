"""A ring clamp holds finished shapes.

What it looks at   a ring clamp on work out of round
Why it matters     it clamps at two points
What to do         another hold
Does not apply     finished bowls and balls
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="ring-clamp-plate", state="not-round"),
    effect=Effect.REFUSE,
    says="A ring clamp sits only on a true shape.",
)
