"""Grit in bark and checks laps tools and slideways.

What it looks at   the condition grit
Why it matters     sand dulls an edge in seconds and laps the machine
What to do         wire brush, wash, dry; cover the ways so that the cover cannot be snatched
Does not apply     clean wood; metal in the wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", grit="yes"),
    effect=Effect.WITH_CARE,
    says="Grit in it: brush and wash it off, carbide at first, cover the slideways.",
)
