"""Green wood shrinks out of a collet.

What it looks at   green wood in a full-circle grip
Why it matters     it dries smaller
What to do         tighten often
Does not apply     dry wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("collet", "collet-block", "split-bushing", "soft-jaws", "drill-chuck"), wet="yes"),
    effect=Effect.HOLD_WITH_CARE,
    says="Wet wood shrinks out of it: tighten at every stop and take it out overnight.",
)
