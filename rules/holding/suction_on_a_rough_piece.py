"""Suction needs a true face.

What it looks at   suction on work out of round
Why it matters     side load is what breaks the seal
What to do         another hold until it is true
Does not apply     round work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="vacuum", state="not-round"),
    effect=Effect.REFUSE,
    says="A seal needs a true face, and a lopsided piece shakes it loose.",
)
