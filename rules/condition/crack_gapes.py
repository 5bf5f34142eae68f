"""A crack that gapes is already moving.

What it looks at   how wide the crack stands open
Why it matters     wood that has opened that far has let go inside as well
What to do         fill it with glue of known cure and bind the piece above and below the cut, or refuse it
Does not apply     closed hair cracks
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("blank", crack_gap_mm=above(1.0)),
    effect=Effect.ASK_FIRST,
    says="The crack gapes more than a millimeter: it must be bound or the piece refused.",
    do="Glue and bind it, or choose another blank.",
    opens=("work.crack.gap",),
)
