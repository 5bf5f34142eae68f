"""Ordinary dust and a bare face.

What it looks at   a material that asks for a P2 mask, with the mask stated absent
Why it matters     the dust irritates, and some of it stays
What to do         a P2 mask at least
Does not apply     mask present; finer dusts, which are asked about
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("need", token="P2", respirator="none"),
    effect=Effect.WITH_CARE,
    says="{title} asks for a mask of class P2 at least, and there is none.",
    do="Wear a P2 mask.",
    opens=("person.respirator",),
)
