"""Most glue does not hold on wet wood.

What it looks at   glued holds on green wood
Why it matters     water keeps the glue from the wood
What to do         screws; polyurethane at most
Does not apply     dry wood; polyurethane
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("glue-block", "paper-joint", "double-sided-tape", "waste-block-faceplate"),
        wet="yes",
        glue=none_of("polyurethane", "cyanoacrylate"),
    ),
    effect=Effect.NOT_ADVISED,
    says="Wet wood and this glue: a third of the strength, if it cures at all.",
)
