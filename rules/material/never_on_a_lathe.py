"""Some materials are never turned here.

What it looks at   materials that no setup makes fit for this lathe: asbestos, treated timber, ivory, hard stone, toxic
                   and unnamed metal
Why it matters     what comes off them poisons, scars or kills, at once or years on
What to do         another material; hand this one to whoever is licensed for it
Does not apply     materials that the right setup opens
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="always"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} is not turned here, whatever the setup: {why}.",
    do="{step}. Ask: {ask_whom}.",
    hard=True,
)
