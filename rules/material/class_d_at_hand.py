"""Light metal that burns: is there class D powder or dry sand?

What it looks at   magnesium and titanium with no word on an extinguisher
Why it matters     water and ordinary powder feed a metal fire
What to do         class D powder or dry sand within reach
Does not apply     extinguisher stated; other metals
Sources            T.O. 1-1A-9, machining of magnesium
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="no-class-D", extinguisher="unknown"),
    effect=Effect.ASK_FIRST,
    says="{title}: is there class D powder or dry sand within reach? Never water.",
    do="State machine.extinguisher.",
    opens=("machine.extinguisher",),
    basis=("to-1-1a-9-magnesium",),
)
