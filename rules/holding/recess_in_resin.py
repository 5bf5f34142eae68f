"""Jaws spreading in resin crack it.

What it looks at   a recess in resin, plastic, laminate, horn or stone
Why it matters     hoop tension finds every flaw
What to do         a glued block or soft jaws closing
Does not apply     wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold", method="jaws-in-recess", family=one_of("resin", "hybrid", "stone", "plastic", "laminate", "animal")
    ),
    effect=Effect.NOT_ADVISED,
    says="Opening jaws crack brittle material.",
)
