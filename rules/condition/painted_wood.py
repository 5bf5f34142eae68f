"""Old paint may be lead.

What it looks at   the condition painted
Why it matters     turning makes dust of it, and lead dust stays in the shop
What to do         a lead test from a paint shop, or strip it wet and away from the lathe
Does not apply     clear varnish of known age; treated timber, which is refused
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", painted="yes"),
    effect=Effect.ASK_FIRST,
    says="Painted wood: old paint may hold lead. Test it before the first cut.",
    do="Test the paint for lead, or strip it wet and away from the lathe.",
    opens=("work.condition",),
)
