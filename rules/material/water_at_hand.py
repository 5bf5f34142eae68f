"""Celluloid: is there water at hand?

What it looks at   celluloid with no word on water
Why it matters     its chips flare from a spark and only water stops them
What to do         a bucket of water under the work
Does not apply     water stated; other plastics
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("refusal", token="no-water", extinguisher="unknown", cooling=none_of("wet")),
    effect=Effect.ASK_FIRST,
    says="{title}: is there a bucket of water under the work and within reach?",
    do="State machine.extinguisher: water.",
    opens=("machine.extinguisher",),
)
