"""More than 50 joules at the first start is past any face shield.

What it looks at   the spinning energy at the starting speed
Why it matters     a face shield is tried with single joules
What to do         start lower, stand out of line, saw it smaller
Does not apply     light work
Sources            ANSI Z87.1-2003 high-mass impact, 6.2 J; 50 J is common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("speed", energy_j=above(50.0)),
    effect=Effect.WITH_CARE,
    says="It carries {energy} at the first start: far past any face shield. Nobody in its plane.",
    basis=("ansi-z87-1-2003", "common-practice"),
)
