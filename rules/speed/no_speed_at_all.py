"""A ceiling this low means there is no safe speed.

What it looks at   a ceiling under 30 rpm
Why it matters     no lathe runs there and no tool cuts there
What to do         balance it, hold it better, or make it smaller
Does not apply     ordinary ceilings
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("speed", ceiling_rpm=below(30.0)),
    effect=Effect.DO_NOT_MOUNT,
    says="No speed is low enough: {why}.",
    do="Move the axis, hold it better, or make it smaller.",
)
