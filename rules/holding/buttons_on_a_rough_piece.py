"""Rubber buttons walk on a rough piece.

What it looks at   button jaws on work out of round
Why it matters     the buttons roll
What to do         another hold
Does not apply     round rims
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="rubber-button-jaws", state="not-round"),
    effect=Effect.REFUSE,
    says="Rubber buttons walk off a piece that is not round.",
)
