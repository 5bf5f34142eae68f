"""Suction without a gauge reading is hope.

What it looks at   suction with no gauge reading given
Why it matters     a leak shows only on the gauge
What to do         read it with the work on; check valve or reservoir; tail up
Does not apply     a stated reading
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="vacuum", gauge="no"),
    effect=Effect.HOLD_WITH_CARE,
    says="Read at least 20 inHg with the work on before you cut, and plan for the pump to stop.",
    opens=("hold.vacuum.gauge",),
)
