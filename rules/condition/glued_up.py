"""Glued pieces are as strong as the poorest joint.

What it looks at   the condition glued-joint
Why it matters     a joint opens from heat, from a blow and from a wedge
What to do         tail up, light cuts, no expanding jaws
Does not apply     solid wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", glued_joint="yes"),
    effect=Effect.WITH_CARE,
    says="Glued joints: light cuts toward the joint closing, and no heat.",
)
