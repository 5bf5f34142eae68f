"""Bone, horn and shell: raw or cleaned?

What it looks at   what was alive, when nobody said whether it was cleaned
Why it matters     raw pieces carry disease and nobody sees it
What to do         say whether it is cleaned and where it comes from
Does not apply     pieces stated cleaned or raw
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="raw", raw="unknown"),
    effect=Effect.ASK_FIRST,
    says="{title}: is it cleaned, dry and of known origin? Raw pieces carry disease.",
    do="State it (work.raw: no). Ask: {ask_whom}.",
    opens=("work.raw",),
)
