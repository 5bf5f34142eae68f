"""Engineers' jaws on large wood stand out too far.

What it looks at   an outside grip over 150 mm
Why it matters     jaws at the end of their travel fly
What to do         a faceplate or a tenon
Does not apply     work to 150 mm
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("three-jaw", "four-jaw-independent"), diameter_mm=above(150.0)),
    effect=Effect.REFUSE,
    says="Over 150 mm the jaws stand out past the body and barely grip.",
)
