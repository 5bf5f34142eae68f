"""Rubber buttons want the tailstock.

What it looks at   button jaws without the tail
Why it matters     buttons creep
What to do         tape belt, tail up until a stub is left
Does not apply     work under the tailstock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="rubber-button-jaws", tail="away"),
    effect=Effect.HOLD_WITH_CARE,
    says="Tape it on besides and keep the tailstock up while you can.",
)
