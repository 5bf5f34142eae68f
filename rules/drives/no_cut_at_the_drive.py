"""No room for a cut beside the drive.

What it looks at   the drive with 3 mm of wood round it against the end
Why it matters     every cut there meets the teeth or takes away the wood that holds them
What to do         leave the end as it is, and part it off; or a smaller drive
Does not apply     drives well inside the end
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("drive", least_over_end=above(1.0)),
    effect=Effect.NOTE,
    says=(
        "No cut within {reach} of the driven end: with the drive at {outer} there is less than 3 mm of wood round it."
    ),
)
