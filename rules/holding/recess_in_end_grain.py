"""Jaws spreading in end grain split it.

What it looks at   a recess in end grain
Why it matters     the fibers part along the axis
What to do         a tenon
Does not apply     side grain
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="jaws-in-recess", grain="along"),
    effect=Effect.NOT_ADVISED,
    says="Opening jaws in end grain is a splitting wedge.",
)
