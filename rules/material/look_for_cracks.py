"""Tap what breaks like pottery.

What it looks at   brittle stone, nuts and shells with no word on their soundness
Why it matters     a dull note is a crack, and a crack is two pieces
What to do         tap it all round and mark every dull place
Does not apply     pieces stated sound; cracked ones, which have rules of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="through-crack", cracked="no", sound="no"),
    effect=Effect.CHECK,
    says="Tap it all round and listen: a dull note is a crack, and cracked {thing} is not mounted.",
)
