"""Some materials are never turned here.

What it looks at   the record of the material
Why it matters     what comes off it harms at once or for life
What to do         another material; ask whoever licenses such work
Does not apply     materials that can be turned
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("material", verdict="do-not-mount"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title}: {never}.",
    do="{next_step}.",
)
