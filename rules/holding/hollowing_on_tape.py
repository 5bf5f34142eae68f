"""Nobody hollows on tape.

What it looks at   hollowing on tape
Why it matters     the rim lever peels it at once
What to do         a tenon, a recess, a glue block
Does not apply     flat work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="double-sided-tape", operation="hollowing"),
    effect=Effect.REFUSE,
    says="Tape does not hold a bowl while it is hollowed.",
)
