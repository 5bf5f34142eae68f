"""Is there extraction?

What it looks at   a material that asks for extraction, with no word on it
Why it matters     with it this is ordinary work
What to do         say what there is
Does not apply     extraction stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("need", token="extraction", extraction="unknown"),
    effect=Effect.WITH_CARE,
    says="{title} asks for extraction at the tool, running before the first cut.",
    do="State person.extraction.",
    opens=("person.extraction",),
)
