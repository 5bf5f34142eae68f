"""Tall work peels off its block.

What it looks at   length over three glued diameters with the tail
Why it matters     glue peels where it does not shear
What to do         a wider face, screws or a tenon
Does not apply     shorter work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("glue-block", "waste-block-faceplate"), tail="up", overhang_ratio=above(3.0)),
    effect=Effect.NOT_ADVISED,
    says="Too tall for its glued face, even with the tailstock.",
)
