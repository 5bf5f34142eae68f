"""Glue that has not cured is a lubricant.

What it looks at   a glued hold stated as not cured
Why it matters     it creeps and lets go
What to do         wait out the full cure
Does not apply     cured joints
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold", method=one_of("glue-block", "paper-joint", "double-sided-tape", "waste-block-faceplate"), cured="no"
    ),
    effect=Effect.REFUSE,
    says="The glue is not cured.",
    opens=("hold.glue.cured",),
)
