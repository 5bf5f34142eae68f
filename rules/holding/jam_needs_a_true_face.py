"""A jam fit needs a true round.

What it looks at   a jam chuck on work out of round
Why it matters     it touches at two places
What to do         another hold until it is round
Does not apply     round work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="jam-chuck", state="not-round"),
    effect=Effect.REFUSE,
    says="A jam fit needs a true round to press on.",
)
