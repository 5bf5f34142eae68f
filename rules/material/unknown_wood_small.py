"""A small sound piece of unknown wood is a fair trial.

What it looks at   unknown wood under 6 in with extraction and mask stated
Why it matters     worst values are used for everything
What to do         go slowly, wear the mask to the end of the sweeping up
Does not apply     larger or faulty pieces
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("name", match="unknown", diameter_mm=below(152.4), controlled="yes", faulty="no"),
    effect=Effect.WITH_CARE,
    says="Unknown wood, small and with dust control: a fair trial at worst-case values. Stop at the first itch.",
)
