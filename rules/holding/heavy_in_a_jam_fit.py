"""A jam fit carries light work.

What it looks at   work over 4 kg in a jam chuck
Why it matters     the fit is tenths of a millimeter of wood
What to do         vacuum, friction block with the tail
Does not apply     light work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="jam-chuck", mass_kg=above(4.0)),
    effect=Effect.NOT_ADVISED,
    says="Too heavy for a jam fit.",
)
