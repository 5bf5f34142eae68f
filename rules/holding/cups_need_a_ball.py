"""Two cups hold a ball.

What it looks at   sphere cups on anything else
Why it matters     a cup touches a flat at its edge
What to do         another hold
Does not apply     balls
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hold", method="sphere-cups", form=none_of("sphere")),
    effect=Effect.REFUSE,
    says="Cups hold only a ball.",
)
