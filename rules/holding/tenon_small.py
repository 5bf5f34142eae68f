"""A tenon under a quarter of the bowl wants the tailstock.

What it looks at   tenon diameter between a fifth and a quarter, tailstock up
Why it matters     the lever is long against the neck
What to do         keep the tailstock up to the last
Does not apply     larger tenons
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, all_of, at_least, below, fact

rule = Rule(
    when=fact("hold", method="jaws-on-tenon", grain="across", tail="up", size_share=all_of(at_least(0.2), below(0.25))),
    effect=Effect.HOLD_WITH_CARE,
    says="The tenon is small for it: keep the tailstock up.",
)
