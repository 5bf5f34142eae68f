"""Grain that runs out of a spindle breaks it.

What it looks at   the slope of the grain against the axis, 1 in 10 or steeper
Why it matters     strength falls to half at 1 in 5
What to do         lay the piece out along the grain, or keep slender places thick
Does not apply     straight grain; work with the grain across
Sources            Wood Handbook, strength against slope of grain; the limit is common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact

rule = Rule(
    when=fact("blank", slope=at_most(10.0), grain="along"),
    effect=Effect.WITH_CARE,
    says="The grain runs out of it: a slender place will snap along the grain.",
)
