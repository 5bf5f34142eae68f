"""A casting is fresh until somebody has tried it.

What it looks at   resin and castings with no word on their cure
Why it matters     uncured resin gums, lets go, and makes skin and lungs allergic for life
What to do         press a fingernail into a sawn face, try a spare piece, wait out the slowest part
Does not apply     castings stated sound or tested; those stated uncured, which are refused
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="uncured", cured="unknown"),
    effect=Effect.ASK_FIRST,
    says="{title}: is it fully cured? Nobody has said so.",
    do="{step}; then state work.tested: yes. Ask: {ask_whom}.",
    opens=("work.tested", "work.condition"),
)
