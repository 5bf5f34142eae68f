"""Jaws and teeth mark a finished surface.

What it looks at   jaws on a finished surface
Why it matters     dents do not sand out
What to do         soft jaws, a jam chuck, suction
Does not apply     surfaces that are cut away
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("three-jaw", "four-jaw-independent", "long-jaws", "drill-chuck"), marks="stay"),
    effect=Effect.REFUSE,
    says="Bare jaws would mark a surface that stays.",
)
