"""A pad or cup drives only while the tail presses.

What it looks at   a friction block or two cups with no tail center
Why it matters     nothing else keeps the work on them: it falls out at the first turn
What to do         tailstock up, or another hold
Does not apply     pads and cups with the tail up; drives with teeth, which have a rule of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("friction-block", "sphere-cups"), tail="away"),
    effect=Effect.REFUSE,
    says="Only the tail keeps it on the pad, and this cut or machine has none.",
)
