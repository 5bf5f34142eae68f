"""Serrated jaws on dry side grain crush and let go.

What it looks at   long jaws on dry side grain
Why it matters     the fibers fold where the jaws press across them
What to do         a tenon with a shoulder
Does not apply     end grain; green wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="long-jaws", grain="across", wet="no", family="wood"),
    effect=Effect.NOT_ADVISED,
    says="Serrated jaws on dry side grain crush two sides only.",
)
