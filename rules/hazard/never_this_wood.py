"""Some woods are poison.

What it looks at   woods on record as poison: sap that blinds, juice that stops the heart
Why it matters     no mask keeps the sap off the skin, and smoke of it harms as well
What to do         leave it; wash what it touched
Does not apply     woods that control opens
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hazard", tier="T4"),
    effect=Effect.DO_NOT_MOUNT,
    says="{wood}: {effects}. Not on a lathe, not at any speed.",
    do="Leave it; wash what it touched.",
    hard=True,
)
