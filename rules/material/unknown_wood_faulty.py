"""Unknown wood with faults is asked about first.

What it looks at   small unknown wood with any fault stated
Why it matters     worst-case strength and a fault together leave nothing to rely on
What to do         cut a sound piece from it
Does not apply     sound pieces
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("name", match="unknown", diameter_mm=below(152.4), controlled="yes", faulty="yes"),
    effect=Effect.ASK_FIRST,
    says="Unknown wood that is not sound: name it or take a sound piece.",
    do="Cut a sound piece from it.",
    opens=("work.condition",),
)
