"""Bark inside the wood is a plane with no strength.

What it looks at   the condition bark-inclusion
Why it matters     the two sides are only held by whatever wood is left around
What to do         turn the blank so that the bark lies in the waste; wrap it
Does not apply     a natural edge on the outside
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", bark_inclusion="yes"),
    effect=Effect.WITH_CARE,
    says="Bark inside it: let the hold span both sides and never let the bark cross a neck or a tenon.",
)
