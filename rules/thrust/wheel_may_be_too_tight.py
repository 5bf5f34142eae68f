"""A free-running screw makes more of the same torque.

What it looks at   the thrust at the high end of the screw's efficiency against the most allowed
Why it matters     a clean oiled screw gives 1.4 times the usual thrust
What to do         back off a little, or weigh the thrust
Does not apply     torques that are too high in any case; torques nobody stated
Sources            work of a screw over one turn; efficiency from memory
"""

from advisor.rulebook import Effect, Rule, above, at_most, fact

rule = Rule(
    when=fact("thrust", wheel_over_allowed=at_most(1.0), wheel_high_over_allowed=above(1.0)),
    effect=Effect.WITH_CARE,
    says=(
        "{given_torque} at the handwheel may give {wheel_high} on a free-running screw; {allowed} is the most"
        " ({why}): back off a little."
    ),
    opens=("hold.handwheel_torque",),
    basis=(
        "screw-theory",
        "memory",
    ),
)
