"""Nobody knows what a nameless material stands.

What it looks at   holds on a material no table knows
Why it matters     a figure would be a guess
What to do         name the material, or try the hold by wrench on a scrap
Does not apply     named materials
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hold", family="unknown", group=none_of("between-centers")),
    effect=Effect.COULD_NOT_CHECK,
    says="Nobody knows what this material stands in a hold.",
)
