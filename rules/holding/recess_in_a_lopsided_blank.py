"""A recess does not hold a blank that still hammers.

What it looks at   a recess on work out of round
Why it matters     blows work the jaws loose and split the rim
What to do         between centers, screws or a tenon first
Does not apply     round work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="jaws-in-recess", state="not-round"),
    effect=Effect.NOT_ADVISED,
    says="A recess is no hold for a blank that is not yet round.",
)
