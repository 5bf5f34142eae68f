"""A pin drive is for tiny work.

What it looks at   an end over 20 mm on a pin
Why it matters     one pin splits or shears
What to do         four teeth or a ring
Does not apply     tiny spindles
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="point-and-pin-drive", end_mm=above(20.0)),
    effect=Effect.REFUSE,
    says="A point and pin drives ends to 20 mm.",
)
