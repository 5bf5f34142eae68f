"""Reaction wood moves as it is cut.

What it looks at   the condition reaction-wood
Why it matters     its own stress comes out as the cut goes in
What to do         rough it, let it rest a day, then finish
Does not apply     straight-grown wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", reaction_wood="yes"),
    effect=Effect.WITH_CARE,
    says="Reaction wood: it moves while you cut, and it is weaker across.",
)
