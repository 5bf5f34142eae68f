"""Some materials are asked about first.

What it looks at   materials that the trade asks about and that no paper settles
Why it matters     whether it can be turned hangs on what nobody can see from here
What to do         ask whoever is named, with the piece in hand
Does not apply     materials of known behavior; those that a test or papers settle, which are asked for that
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("material", verdict="ask-first", proof="no"),
    effect=Effect.ASK_FIRST,
    says="{title}: {fails_by}. Leave it alone when: {never}.",
    do="{step}. Ask: {ask_whom}.",
    opens=("work.material",),
)
