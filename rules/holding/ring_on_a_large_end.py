"""A toothed ring is for ends to 100 mm.

What it looks at   an end over 100 mm on a ring
Why it matters     the lever outgrows the ring
What to do         a four-spur drive
Does not apply     smaller ends
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="toothed-ring-drive", end_mm=above(100.0)),
    effect=Effect.NOT_ADVISED,
    says="Too large for a toothed ring.",
)
