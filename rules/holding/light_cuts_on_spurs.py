"""Spurs in a small or soft end carry light cuts.

What it looks at   the share of an ordinary cut that the teeth carry with their whole divisor, from half of it to all
Why it matters     in a small end the teeth can go no deeper; every turner roughs a thin square with a light hand
What to do         seat them, keep to light cuts with a sharp edge until it runs round
Does not apply     teeth that carry the whole cut, or not half of it; a force the person stated; side grain
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, all_of, at_least, below, fact

rule = Rule(
    when=fact("hold", lighter=all_of(at_least(0.5), below(1.0))),
    effect=Effect.HOLD_WITH_CARE,
    says="Light cuts, up to {light}, with a sharp edge: in an end like this the teeth can carry no more.",
)
