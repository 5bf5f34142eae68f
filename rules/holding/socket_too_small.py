"""A square socket takes sides to 55 mm.

What it looks at   a side over 55 mm
Why it matters     the socket is as heavy as the work
What to do         a spur drive
Does not apply     smaller squares
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="square-socket-drive", end_mm=above(55.0)),
    effect=Effect.REFUSE,
    says="Too large for a square socket.",
)
