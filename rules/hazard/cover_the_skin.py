"""Dust that the skin learns to hate.

What it looks at   materials that sensitize or pierce the skin
Why it matters     the rash comes back from ever less
What to do         cuffs closed, barrier cream, a wash afterward; gloves only with the machine stopped
Does not apply     materials that leave the skin alone
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("need", token="skin"),
    effect=Effect.CHECK,
    says=(
        "{title} sensitizes or pricks the skin: close the cuffs, use barrier cream, wash after. Gloves only with "
        "the lathe stopped."
    ),
)
