"""A recess in wet wood goes oval and loosens.

What it looks at   a recess in green wood
Why it matters     it shrinks across and not along
What to do         a tenon left oversize, or screws
Does not apply     dry wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="jaws-in-recess", wet="yes"),
    effect=Effect.NOT_ADVISED,
    says="A recess in wet wood goes oval and lets go.",
)
