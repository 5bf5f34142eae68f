"""Wide discs outgrow tape.

What it looks at   discs over 150 mm on tape
Why it matters     the lever at the rim grows, the tape does not
What to do         a glue block
Does not apply     discs to 150 mm
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="double-sided-tape", diameter_mm=above(150.0)),
    effect=Effect.NOT_ADVISED,
    says="Over 150 mm the rim outgrows the tape.",
)
