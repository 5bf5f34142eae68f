"""A name that says painted says lead until tested.

What it looks at   the word painted in the name of a wood
Why it matters     turning makes dust of old paint, and lead dust stays in the shop
What to do         a lead test, or strip it wet and away from the lathe
Does not apply     paint stated as a condition, which has its own rule
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="painted"),
    effect=Effect.ASK_FIRST,
    says="Painted wood: old paint may hold lead. Test it before the first cut.",
    do="{step}. Ask: {ask_whom}.",
    opens=("work.condition",),
)
