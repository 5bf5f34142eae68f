"""Some materials are asked about first.

What it looks at   the record of the material
Why it matters     it depends on what nobody can see
What to do         test, certificate, cure or provenance first
Does not apply     materials of known behavior
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("material", verdict="ask-first"),
    effect=Effect.ASK_FIRST,
    says="{title}: {fails_by}. Not when {never}.",
    do="{next_step}.",
    opens=("work.tested",),
)
