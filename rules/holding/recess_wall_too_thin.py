"""A recess needs wood around it.

What it looks at   the wall outside the recess
Why it matters     opening jaws load it like a hoop
What to do         a smaller recess or a tenon
Does not apply     walls of 15 mm and more
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="jaws-in-recess", wall_mm=below(15.0)),
    effect=Effect.REFUSE,
    says="Less than 15 mm of wood around the recess: the jaws burst it.",
    opens=("hold.recess.wall",),
)
