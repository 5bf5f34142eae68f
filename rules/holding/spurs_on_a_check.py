"""Spurs in line with a check split it.

What it looks at   spurs in a checked end
Why it matters     a spur in a check is a wedge
What to do         turn the drive so that the check lies between the spurs
Does not apply     sound ends
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("spur-drive", "two-spur-drive"), check="yes"),
    effect=Effect.HOLD_WITH_CARE,
    says="Set no spur in line with a check.",
)
