"""Bare three jaws crush wood.

What it looks at   an engineer's three-jaw bare on wood while another hold is at hand
Why it matters     the jaws dent it, it shrinks, it slips
What to do         a split hardwood sleeve, a collet, soft jaws
Does not apply     when it is the only hold there is
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method="three-jaw", family="wood", alone="no", form=one_of("round", "ring", "sphere", "tube")),
    effect=Effect.NOT_ADVISED,
    says="Bare jaws crush wood at three lines: a collet or a split sleeve does it better.",
)
