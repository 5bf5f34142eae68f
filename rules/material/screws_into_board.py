"""Screws split board along its edge and strip its face.

What it looks at   board held by screws or spurs
Why it matters     it is made of dust and glue: screws in its edge open it like a book
What to do         a solid block glued to its face
Does not apply     board held by glue; other materials, which have the same rule among the holds
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "refusal",
        token="screwed",
        family="board",
        method=one_of("faceplate-screws", "screw-chuck", "spur-drive", "two-spur-drive", "toothed-ring-drive"),
    ),
    effect=Effect.ASK_FIRST,
    says="Screws or spurs in {thing}: through its face only, and never in its edge. A glued block is better.",
    do="Glue a solid block to its face.",
    opens=("hold.method",),
)
