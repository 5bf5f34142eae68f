"""The handwheel is wound past the limit.

What it looks at   the thrust that the stated handwheel torque gives against the most allowed
Why it matters     past it the end splits, the bar bows or the bearing goes
What to do         back off to the torque advised
Does not apply     torques under the limit; torques nobody stated
Sources            work of a screw over one turn; efficiency from memory
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("thrust", wheel_over_allowed=above(1.0)),
    effect=Effect.ASK_FIRST,
    says=("{given_torque} at the handwheel gives about {wheel_usual}; {allowed} is the most ({why})."),
    do="Back the tailstock off before the lathe turns.",
    opens=("hold.handwheel_torque",),
    basis=(
        "screw-theory",
        "memory",
    ),
)
