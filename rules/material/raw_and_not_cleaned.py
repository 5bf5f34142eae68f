"""Raw bone, horn and shell carry disease.

What it looks at   what was alive and is stated raw, or of unknown origin
Why it matters     raw horn has carried anthrax; grease and rot do the rest
What to do         buy it cleaned and with papers, or soak, degrease and dry it away from the shop
Does not apply     cleaned and dried pieces of known origin
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="raw", raw="yes"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} that is raw or of unknown origin: it may carry disease, and it lets go as it dries.",
    do="{step}. Ask: {ask_whom}.",
    opens=("work.raw",),
)
