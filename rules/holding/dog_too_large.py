"""A driving dog takes 6 to 75 mm.

What it looks at   work over 75 mm in a dog
Why it matters     its tail sweeps too wide
What to do         a faceplate or jaws
Does not apply     rods
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="driving-dog", diameter_mm=above(75.0)),
    effect=Effect.REFUSE,
    says="Too large for a dog.",
)
