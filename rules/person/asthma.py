"""Asthma and dust do not go together.

What it looks at   asthma stated
Why it matters     any dust may set it off
What to do         powered hood, wet or green work, somebody within call
Does not apply     people without asthma; spalted or rotten wood and dusts that sensitize the lungs, which are asked
                   about first
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("person", asthma="yes", spalted="no"),
    effect=Effect.WITH_CARE,
    says=(
        "With asthma: powered hood or P3, extraction on, and stop at the first tightness. A physician knows your "
        "lungs, this program does not."
    ),
)
