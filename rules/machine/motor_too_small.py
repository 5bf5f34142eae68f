"""A cut the motor cannot pull stalls in the work.

What it looks at   the power of the cut at the start against the motor
Why it matters     a stall is a catch in slow motion
What to do         take the low pulley: torque rises as speed falls
Does not apply     cuts the motor can pull
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("machine", power_share=above(1.0)),
    effect=Effect.CAUTION,
    says=(
        "The motor cannot pull this cut at that speed: lower pulley, lighter cut, or it stalls with the edge buried."
    ),
)
