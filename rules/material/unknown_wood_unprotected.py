"""Unknown wood without dust control is a bet with your lungs.

What it looks at   small unknown wood with extraction or mask not stated
Why it matters     sensitizing builds up unnoticed and stays for life
What to do         extraction on, a P2 mask at least, and say so in the case
Does not apply     the same piece with both stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("name", match="unknown", diameter_mm=below(152.4), controlled="no"),
    effect=Effect.ASK_FIRST,
    says="Nobody knows this wood: say what extraction and mask you use before you raise its dust.",
    do="State extraction and mask (person.extraction, person.respirator).",
    opens=("person.extraction", "person.respirator"),
)
