"""Glue on what nobody knows is a guess.

What it looks at   glued holds on an unknown material
Why it matters     a joint that looks good may peel
What to do         jaws, or a trial joint broken first
Does not apply     known materials
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("glue-block", "paper-joint", "double-sided-tape", "waste-block-faceplate"),
        sticks="unknown",
    ),
    effect=Effect.NOT_ADVISED,
    says="Nobody knows whether glue holds on this.",
)
