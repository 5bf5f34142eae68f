"""What to set, at the handwheel and at its rim.

What it looks at   a thrust that can be set, on a tailstock whose travel per turn and wheel are known
Why it matters     nobody can read newtons off a handwheel; torque and rim force can be felt and weighed
What to do         wind to the torque, never past the most
Does not apply     empty windows; windows narrower than a handwheel can be read; wheels nobody measured
Sources            work of a screw over one turn; efficiency from memory
"""

from advisor.rulebook import Effect, Rule, at_least, at_most, fact

rule = Rule(
    when=fact(
        "thrust",
        cut_over_least=at_least(1.0),
        set_over_allowed=at_most(1.0),
        wheel_torque_over_most=at_most(1.0),
        wheel_size="yes",
    ),
    effect=Effect.CHECK,
    says=(
        "Set the tailstock to {set}: about {wheel_torque} at the handwheel, {rim} at its rim; never more than"
        " {wheel_most}."
    ),
    basis=(
        "screw-theory",
        "memory",
    ),
)
