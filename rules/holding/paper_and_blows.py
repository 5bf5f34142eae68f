"""A paper joint does not take blows.

What it looks at   a paper joint on work out of round
Why it matters     paper is made to split
What to do         a plain glue block
Does not apply     round work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="paper-joint", state="not-round"),
    effect=Effect.NOT_ADVISED,
    says="A paper joint splits at the first interrupted cut.",
)
