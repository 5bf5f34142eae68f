"""Spalted wood is hard and soft side by side.

What it looks at   the condition spalted
Why it matters     soft streaks tear and let go; fungal dust has made people very ill
What to do         test the hold with a thumbnail; glue block or screws in sound wood; P3 filters
Does not apply     clear wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", spalted="yes"),
    effect=Effect.WITH_CARE,
    says="Spalted wood: sound where it is held, low speed, very sharp tools, and a good mask for the spores.",
)
