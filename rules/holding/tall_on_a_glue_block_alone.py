"""Work taller than one and a half glued faces peels off without the tailstock.

What it looks at   length over one and a half glued diameters without the tail
Why it matters     glue peels where it does not shear
What to do         tailstock, a wider face, screws
Does not apply     shorter work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("glue-block", "waste-block-faceplate"), tail="away", overhang_ratio=above(1.5)),
    effect=Effect.NOT_ADVISED,
    says="Too tall for its glued face without the tailstock.",
)
