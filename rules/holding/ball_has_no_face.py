"""A ball has no flat face.

What it looks at   glue, tape, plates and clamps on a ball
Why it matters     a joint needs two flat faces; a ball touches at a point
What to do         two soft cups, a jam fit or a seal
Does not apply     everything else; a ball not yet parted from its stub
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        form="sphere",
        method=one_of(
            "glue-block",
            "waste-block-faceplate",
            "paper-joint",
            "double-sided-tape",
            "clamped-faceplate",
            "offset-faceplate",
        ),
    ),
    effect=Effect.REFUSE,
    says="A ball has no flat face to fasten.",
)
