"""A drive meant to slip needs light cuts.

What it looks at   capacity of a ring, cup, mandrel or pad against the cut
Why it matters     a slip between centers is a fuse
What to do         light cuts; more thrust or a spur drive for more
Does not apply     drives that hold positively
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, all_of, at_least, below, fact

rule = Rule(
    when=fact("hold", model="yes", slips="yes", divided=all_of(at_least(0.5), below(1.0))),
    effect=Effect.HOLD_WITH_CARE,
    says="Light cuts: it slips in a heavy one, and that is its job.",
)
