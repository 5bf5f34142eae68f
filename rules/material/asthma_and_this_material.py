"""Asthma and a dust that sensitizes the lungs.

What it looks at   asthma with board, shell, phenolic and other dusts on record as lung sensitizers
Why it matters     it can set off an attack, and start an asthma in who has none
What to do         ask the physician; another material
Does not apply     people without asthma; dusts not on record for the lungs
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("material", lung="yes", asthma="yes"),
    effect=Effect.ASK_FIRST,
    says="{title}: its dust sensitizes the lungs, and you have asthma. Ask your physician before you raise it.",
    do="Ask your physician, or choose another material.",
    opens=("work.material",),
)
