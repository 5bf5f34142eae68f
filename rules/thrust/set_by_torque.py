"""What to set, as a torque at the handwheel.

What it looks at   a thrust that can be set, on a tailstock whose travel per turn is known
Why it matters     nobody can read newtons off a handwheel
What to do         wind to the torque, never past the most; the wheel's diameter gives the force at its rim
Does not apply     empty windows; windows narrower than a handwheel can be read; tailstocks nobody measured
Sources            work of a screw over one turn; efficiency from memory
"""

from advisor.rulebook import Effect, Rule, at_least, at_most, fact

rule = Rule(
    when=fact(
        "thrust",
        cut_over_least=at_least(1.0),
        set_over_allowed=at_most(1.0),
        wheel_torque_over_most=at_most(1.0),
        wheel_size="no",
    ),
    effect=Effect.CHECK,
    says=("Set the tailstock to {set}: about {wheel_torque} at the handwheel, never more than {wheel_most}."),
    basis=(
        "screw-theory",
        "memory",
    ),
)
