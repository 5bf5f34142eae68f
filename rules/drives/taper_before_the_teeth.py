"""The shank lets go before the teeth.

What it looks at   the torque of the shank's taper against the low end of the drive's
Why it matters     the taper turns in the spindle and scores it, unseen
What to do         seat it clean and dry with a tap off the work, a drawbar, or a drive held in a chuck
Does not apply     shanks whose taper nobody stated
Sources            statics of a cone; friction of steel on steel from memory
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("drive", taper_over_slip_low=below(1.0)),
    effect=Effect.CHECK,
    says=(
        "The shank's taper carries {taper} at this thrust, the drive {slip}: the taper lets go first and "
        "scores the spindle. Seat it with a tap off the work, or use a drawbar."
    ),
    basis=(
        "statics",
        "memory",
    ),
)
