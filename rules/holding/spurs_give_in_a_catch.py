"""In a hard catch spurs tear out.

What it looks at   what a hard catch asks of a drive that is not meant to slip
Why it matters     torn out it bores into the end while the tail keeps it there
What to do         stop at once, seat it again in fresh wood
Does not apply     drives that slip; drives that stand a catch; chucks
Sources            common practice, no source; catch of 1 kN from memory
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", group="between-centers", slips="no", catch=above(1.0)),
    effect=Effect.NOTE,
    says="In a hard catch it tears out of the end; the work stays between the centers: stop at once.",
    basis=("common-practice", "memory"),
)
