"""Work longer than wide levers one screw out.

What it looks at   length against diameter on a screw chuck without the tail
Why it matters     the face is too small for that lever
What to do         tailstock up
Does not apply     short work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="screw-chuck", tail="away", ratio=above(1.0)),
    effect=Effect.NOT_ADVISED,
    says="Longer than wide on one screw and no tailstock: it levers out.",
)
