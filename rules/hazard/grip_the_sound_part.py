"""Grip what is solid.

What it looks at   pods and other stuff that is solid only in places
Why it matters     the rest crumbles in the jaws
What to do         turn the solid part first and grip that
Does not apply     stuff solid all through
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("need", token="sound-hold"),
    effect=Effect.CHECK,
    says="Turn the solid part of the {thing} first, and grip that.",
)
