"""Frozen wood thaws in the hold.

What it looks at   moisture given as frozen
Why it matters     strength tables rate frozen wood high; the hold is in the layer that thaws first
What to do         let it thaw, or stop and tighten every few minutes
Does not apply     green wood that is not frozen
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", moisture="frozen"),
    effect=Effect.WITH_CARE,
    says="Frozen wood counts as green: it thaws in the jaws. Tighten again as it does.",
)
