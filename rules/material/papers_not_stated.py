"""Coral and teeth: where are the papers?

What it looks at   protected material with no word on its papers
Why it matters     the law asks whoever holds it
What to do         papers of origin; then state work.tested: yes
Does not apply     papers stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="provenance", tested="unknown"),
    effect=Effect.ASK_FIRST,
    says="{title}: are there papers of origin? The law on protected animals asks for them.",
    do="Get the papers and state work.tested: yes. Ask: {ask_whom}.",
    opens=("work.tested",),
)
