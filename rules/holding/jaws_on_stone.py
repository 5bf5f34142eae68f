"""Jaws crack stone.

What it looks at   steel jaws on stone
Why it matters     point pressure runs along a vein
What to do         epoxy on a block two thirds of its width
Does not apply     wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("jaws-on-tenon", "long-jaws", "three-jaw", "screw-chuck"), family="stone"),
    effect=Effect.NOT_ADVISED,
    says="Jaws on stone start a crack: glue it on a wide solid block.",
)
