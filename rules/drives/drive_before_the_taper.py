"""The drive lets go before its shank.

What it looks at   the torque of the shank's taper against the high end of the drive's
Why it matters     that is the right order: wood slips, the spindle stays whole
What to do         nothing
Does not apply     shanks whose taper nobody stated; tapers that slip first
Sources            statics of a cone; friction of steel on steel from memory
"""

from advisor.rulebook import Effect, Rule, at_least, fact

rule = Rule(
    when=fact("drive", taper_over_slip_high=at_least(1.0)),
    effect=Effect.NOTE,
    says="The drive lets go at {slip}, before the shank's taper does ({taper}): the right order.",
    basis=(
        "statics",
        "memory",
    ),
)
