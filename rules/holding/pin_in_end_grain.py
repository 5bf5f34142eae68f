"""A pin in end grain splits it.

What it looks at   a pin chuck in end grain
Why it matters     the pin is a wedge
What to do         spurs or a tenon
Does not apply     side grain
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="pin-chuck", grain="along"),
    effect=Effect.NOT_ADVISED,
    says="A pin in an end-grain hole wedges the fibers apart.",
)
