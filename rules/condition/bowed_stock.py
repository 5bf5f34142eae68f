"""Bowed stock whips and buckles early.

What it looks at   the condition bowed
Why it matters     the bow grows with thrust and with speed
What to do         saw it shorter or turn it true from the middle outward
Does not apply     straight stock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", bowed="yes"),
    effect=Effect.WITH_CARE,
    says="It is bowed: stay at the start speed until it is true, less thrust, a steady if it is long.",
)
