"""Bare three jaws on wood when nothing else is there.

What it looks at   a kit with nothing but a three-jaw
Why it matters     the jaws dent it, it shrinks, it slips
What to do         make a split sleeve from a scrap: it takes ten minutes
Does not apply     when a better hold is at hand
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="three-jaw", family="wood", alone="yes"),
    effect=Effect.HOLD_WITH_CARE,
    says="Bare jaws on wood: card or leather under them, low pressure, tighten again after the first cut.",
)
