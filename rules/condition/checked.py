"""End checks open under a wedge and under speed.

What it looks at   the condition check
Why it matters     a point or a jaw set on a check is a wedge
What to do         saw the checked end off if you can; else set teeth and jaws across the check
Does not apply     longer cracks, which have rules of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", check="yes"),
    effect=Effect.WITH_CARE,
    says="There are checks in it: keep centers and jaws off them and the speed down.",
)
