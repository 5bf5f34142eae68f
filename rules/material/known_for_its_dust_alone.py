"""A wood known for its dust alone gets the worst strength.

What it looks at   a wood that the table of hazards knows and the tables of strength do not
Why it matters     a guess at its strength must not flatter it
What to do         slow, small, tail up; the hazard of its dust is judged apart
Does not apply     woods with strength in the tables; wood nobody can name
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("name", match="dust-only"),
    effect=Effect.NOTE,
    says='What "{material}" does to people is known, its strength is not: worst-case values are used.',
)
