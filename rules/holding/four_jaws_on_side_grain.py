"""Jaws squeeze a side-grain blank oval and dent it.

What it looks at   independent jaws on side grain
Why it matters     wood is soft one way and weak the other
What to do         a faceplate, a screw, a tenon
Does not apply     end grain
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="four-jaw-independent", grain="across", family="wood"),
    effect=Effect.NOT_ADVISED,
    says="Jaws on a side-grain blank crush two sides and split the others.",
)
