"""A drill chuck on a plain taper walks out.

What it looks at   a drill chuck as a work holder without a drawbar
Why it matters     it is made for thrust and not for side load
What to do         fit a drawbar, or use a collet
Does not apply     with a drawbar
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hold", method="drill-chuck", drawbar=none_of("yes")),
    effect=Effect.NOT_ADVISED,
    says="A drill chuck needs a drawbar: side load walks its taper out.",
)
