"""Quick glue does not hold on wet wood.

What it looks at   cyanoacrylate with green wood
Why it matters     it cures on the water and not on the wood
What to do         screws, or dry wood
Does not apply     dry wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("glue-block", "paper-joint", "double-sided-tape", "waste-block-faceplate"),
        wet="yes",
        glue="cyanoacrylate",
    ),
    effect=Effect.REFUSE,
    says="Cyanoacrylate does not hold on wet wood.",
)
