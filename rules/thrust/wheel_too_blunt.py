"""The window is narrower than a handwheel can be read.

What it looks at   the torque for the thrust to set on a usual screw, against the most on a free-running one
Why it matters     one torque at the wheel is more than twice the thrust on a free screw than on a stiff one
What to do         wind to the most and no further, try it by hand; lighter cuts if it slips; or weigh the thrust
Does not apply     wider windows; tailstocks whose travel nobody gave
Sources            work of a screw over one turn; efficiency from memory
"""

from advisor.rulebook import Effect, Rule, above, at_least, at_most, fact

rule = Rule(
    when=fact(
        "thrust",
        cut_over_least=at_least(1.0),
        set_over_allowed=at_most(1.0),
        wheel_torque_over_most=above(1.0),
    ),
    effect=Effect.CHECK,
    says=(
        "Set the tailstock to {set}, closer than a handwheel tells: wind to {wheel_most} and no further, which gives "
        "{wheel_least} to {allowed}. Power off, turn the work by hand against the spindle: if it slips, lighter "
        "cuts, or weigh the thrust with a scale between the centers."
    ),
    basis=("screw-theory", "memory"),
)
