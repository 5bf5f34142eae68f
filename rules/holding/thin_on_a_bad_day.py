"""The hold carries the cut on an ordinary day and not on a bad one.

What it looks at   ordinary capacity over its divisor, and low capacity, against the need
Why it matters     a poor grip or weak wood leaves nothing over
What to do         tighten in two passes, tug by hand, light cuts, check again
Does not apply     holds with margin to spare
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, below, fact

rule = Rule(
    when=fact("hold", model="yes", low=below(1.0), divided=at_least(1.0)),
    effect=Effect.HOLD_WITH_CARE,
    says="Good on an ordinary day: tighten, tug it by hand, take light cuts, tighten again.",
)
