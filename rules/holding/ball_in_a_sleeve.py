"""A ball in a sleeve touches on a line.

What it looks at   a ball in a collet, a collet block or a split sleeve
Why it matters     one line of contact does not keep it from turning over
What to do         two soft cups, a jam fit or jaws bored to the ball
Does not apply     rods and everything with a length to grip
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", form="sphere", method=one_of("collet", "collet-block", "split-bushing")),
    effect=Effect.NOT_ADVISED,
    says="A ball in a sleeve touches on one line and turns over.",
)
