"""A finished piece without tenon or recess has nothing left to grip.

What it looks at   a chuck hold on finished work with no tenon or recess
Why it matters     there is no wood for the jaws
What to do         a jam chuck, a friction block, suction
Does not apply     work that still has its tenon or recess
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("jaws-on-tenon", "jaws-in-recess", "long-jaws"), state="finished", given="no"),
    effect=Effect.REFUSE,
    says="Finished, and nothing was left to grip.",
)
