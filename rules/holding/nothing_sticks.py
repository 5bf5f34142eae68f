"""No adhesive holds this plastic.

What it looks at   glued and taped holds on polyethylene, polypropylene, PTFE, acetal, nylon
Why it matters     the surface lets everything go
What to do         clamps, soft jaws, a friction block
Does not apply     what glue holds
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold", method=one_of("glue-block", "paper-joint", "double-sided-tape", "waste-block-faceplate"), sticks="no"
    ),
    effect=Effect.REFUSE,
    says="No glue or tape holds this material.",
)
