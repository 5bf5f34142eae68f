"""A hold that the cut overpowers is refused.

What it looks at   ordinary capacity against the need
Why it matters     it lets go in the first heavy cut
What to do         another hold, the tailstock, lighter cuts
Does not apply     holds a steady makes good; drives meant to slip; spurs that carry light cuts
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", model="yes", slips="no", typical=below(1.0), steady_divided=below(1.0), lighter=below(0.5)),
    effect=Effect.REFUSE,
    says="The cut is stronger than the hold.",
)
