"""Some dusts are not raised without extraction.

What it looks at   laminate, board, fiber and stone with extraction stated absent
Why it matters     the dust harms, and a mask alone leaves it in the room
What to do         extraction at the tool, running before the first cut
Does not apply     the same with extraction
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="no-extraction", extraction="no"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} is not turned without dust extraction at the tool.",
    do="Fit extraction at the tool, or {next_step}.",
    opens=("person.extraction",),
)
