"""A recess does not hold deep hollowing.

What it looks at   hollowing work deeper than half its width from a recess
Why it matters     the lever opens the recess
What to do         a tenon with a shoulder
Does not apply     shallow work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="jaws-in-recess", operation="hollowing", ratio=above(0.5)),
    effect=Effect.NOT_ADVISED,
    says="Too deep to hollow from a recess: a tenon holds it better.",
)
