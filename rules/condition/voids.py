"""A void leaves less wood in the hold than it looks.

What it looks at   the condition void
Why it matters     holes inside cannot be seen, and each rim is an interrupted cut
What to do         tap round it, probe the holes, hold it in solid wood
Does not apply     sound wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", void="yes"),
    effect=Effect.WITH_CARE,
    says="Voids in it: none may lie in the hold, and the tool meets an edge at each of them.",
)
