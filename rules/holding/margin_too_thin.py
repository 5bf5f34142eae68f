"""A hold that only just carries the cut is not advised.

What it looks at   ordinary capacity between the need and the need times its divisor
Why it matters     cuts have peaks and hands have days
What to do         a larger hold, the tailstock, lighter cuts
Does not apply     holds a steady makes good; drives meant to slip; spurs that carry light cuts
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, below, fact

rule = Rule(
    when=fact(
        "hold",
        model="yes",
        slips="no",
        typical=at_least(1.0),
        divided=below(1.0),
        steady_divided=below(1.0),
        lighter=below(0.5),
    ),
    effect=Effect.NOT_ADVISED,
    says="It would carry the cut, but with no margin for a peak.",
)
