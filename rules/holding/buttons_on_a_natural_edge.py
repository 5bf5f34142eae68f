"""Rubber buttons cannot grip a natural edge.

What it looks at   button jaws on a natural edge
Why it matters     some buttons hold bark and some hold air
What to do         a jam chuck or friction block
Does not apply     plain rims
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="rubber-button-jaws", live_edge="yes"),
    effect=Effect.REFUSE,
    says="A natural edge gives the buttons nothing even to grip.",
)
