"""Jaws do not hold a thin disc.

What it looks at   independent jaws on work thinner than 0.3 of its width
Why it matters     a short grip rocks
What to do         a glued block or clamps
Does not apply     longer work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="four-jaw-independent", ratio=below(0.3)),
    effect=Effect.NOT_ADVISED,
    says="Too thin for the jaws to steady it.",
)
