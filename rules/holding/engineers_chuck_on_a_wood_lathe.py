"""Engineers' chucks are out of place on a wood lathe.

What it looks at   engineers' chucks on a wood lathe when nobody named them
Why it matters     unguarded jaw corners are a blur at 1500 rpm
What to do         a wood chuck on a tenon
Does not apply     metal lathes; kits that name them
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("three-jaw", "four-jaw-independent"), machine="wood-lathe", named="no"),
    effect=Effect.NOT_ADVISED,
    says="An engineer's chuck on a wood lathe: bare jaws at wood speeds; only if it is what you have.",
)
