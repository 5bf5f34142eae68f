"""A cup drives work to about 75 mm.

What it looks at   an end over 75 mm on a cup
Why it matters     friction on a small ring slips at once
What to do         a spur drive
Does not apply     smaller ends
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="cup-drive", end_mm=above(75.0)),
    effect=Effect.NOT_ADVISED,
    says="Too large for a cup drive.",
)
