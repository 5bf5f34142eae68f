"""Work between centers needs the tailstock.

What it looks at   a between-centers hold with the tail away
Why it matters     thrust is what holds it
What to do         bring the tailstock up, or hold one end
Does not apply     work with the tail up
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", group="between-centers", tail="away"),
    effect=Effect.REFUSE,
    says="This hold is nothing without the tailstock, and this cut or machine has none.",
)
