"""Spalted wood and asthma have killed.

What it looks at   asthma with spalted, punky or rotten wood
Why it matters     fungal spores set off severe attacks; one death is on record
What to do         choose clean wood; ask the physician
Does not apply     sound wood; people without asthma
Sources            poison center note on spalted wood
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("person", asthma="yes", spalted="yes"),
    effect=Effect.ASK_FIRST,
    says="Asthma and spalted or rotten wood: ask your physician first. Severe attacks and a death are on record.",
    do="Ask your physician, or choose clean wood.",
    opens=("work.condition",),
    basis=("poison-center-note",),
)
