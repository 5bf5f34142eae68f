"""Oily wood sheds glue.

What it looks at   glued holds on oily wood
Why it matters     oil keeps the glue from the fibers
What to do         solvent wipe, scuff, epoxy
Does not apply     dry woods
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold", method=one_of("glue-block", "paper-joint", "double-sided-tape", "waste-block-faceplate"), oily="yes"
    ),
    effect=Effect.HOLD_WITH_CARE,
    says="Oily wood: wipe the face with solvent and use epoxy.",
)
