"""A jam fit in wet wood lasts minutes.

What it looks at   a jam chuck with green wood
Why it matters     a few percent of moisture is more than the fit
What to do         dry it first; tail up
Does not apply     dry wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="jam-chuck", wet="yes"),
    effect=Effect.NOT_ADVISED,
    says="Wet wood moves more than the fit is tight.",
)
