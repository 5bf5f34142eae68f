"""Some holds are judged by practice alone.

What it looks at   holds without a model of their strength
Why it matters     there is nothing honest to compute
What to do         tug it by hand, light cuts first
Does not apply     holds with a model
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", model="no"),
    effect=Effect.SUITS,
    says="Judged by practice, no figure behind it.",
)
