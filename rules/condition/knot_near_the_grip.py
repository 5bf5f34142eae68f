"""A knot is a hard plug in soft wood.

What it looks at   the condition knot
Why it matters     the grain round a knot runs every way and breaks short
What to do         turn the blank end for end if the knot lies in the hold
Does not apply     clear wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", knot="yes"),
    effect=Effect.CHECK,
    says="Keep knots out of the hold: none within one diameter of it.",
)
