"""Coral and teeth without papers are left alone.

What it looks at   protected material stated to have no papers
Why it matters     the law forbids most of it, and papers come before the purchase
What to do         leave it; dyed resin, tagua nut
Does not apply     material with its papers
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="provenance", tested="no"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} without papers: the law on protected animals comes first.",
    do="{step}. Ask: {ask_whom}.",
    opens=("work.tested",),
)
