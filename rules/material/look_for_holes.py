"""Castings, board and pods hide holes.

What it looks at   board, castings and pods with no word on voids
Why it matters     a void under the jaws is found by the jaws
What to do         look at both ends under a lens, probe with a nail
Does not apply     pieces stated sound; voids stated, which are asked about
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="void-at-hold", void="no", sound="no"),
    effect=Effect.CHECK,
    says="Look at both ends of the {thing} and probe with a nail: no hole may lie where it is held.",
)
