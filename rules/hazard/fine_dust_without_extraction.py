"""Fine dust stays in the room.

What it looks at   a material whose dust asks for P3 filters, with extraction stated absent
Why it matters     the mask comes off and the dust still hangs in the air
What to do         extraction at the tool
Does not apply     dust control stated present; materials refused without extraction
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("need", token="extraction", extraction="no", mask="P3"),
    effect=Effect.ASK_FIRST,
    says="{title} asks for extraction at the tool: its fine dust hangs in the room after the mask is off.",
    do="Fit extraction at the tool.",
    opens=("person.extraction",),
)
