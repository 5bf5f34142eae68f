"""The handwheel is not wound enough to drive.

What it looks at   the thrust at the low end of the screw's efficiency against what is to be set
Why it matters     a stiff screw gives little, and a third of it is gone after a minute
What to do         wind to the torque advised
Does not apply     enough torque; torques nobody stated
Sources            work of a screw over one turn; efficiency from memory
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("thrust", wheel_low_over_set=below(1.0)),
    effect=Effect.WITH_CARE,
    says=("{given_torque} at the handwheel gives perhaps only {wheel_low} on a stiff screw; this work wants {set}."),
    do="Wind it up to the torque advised.",
    opens=("hold.handwheel_torque",),
    basis=(
        "screw-theory",
        "memory",
    ),
)
