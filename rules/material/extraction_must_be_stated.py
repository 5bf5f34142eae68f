"""Some dusts need extraction: is there any?

What it looks at   laminate, board, fiber and stone with no word on extraction
Why it matters     with it they are worked every day, without it they are refused
What to do         say what extraction there is
Does not apply     extraction stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="no-extraction", extraction="unknown"),
    effect=Effect.ASK_FIRST,
    says="{title} needs dust extraction at the tool: say whether you have it.",
    do="State person.extraction.",
    opens=("person.extraction",),
)
