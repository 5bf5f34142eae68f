"""A tenon cannot be gripped before it is cut.

What it looks at   a chuck hold on work that is not round and has no tenon
Why it matters     jaws on a rough end touch at two places
What to do         turn the tenon between centers, shoulder square and a hair hollow
Does not apply     work that has its tenon
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("jaws-on-tenon", "long-jaws"), state="not-round", given="no"),
    effect=Effect.HOLD_WITH_CARE,
    says="Cut the tenon first, between centers or on a screw.",
)
