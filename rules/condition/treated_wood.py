"""Treated and creosoted wood poisons the shop.

What it looks at   the condition treated
Why it matters     no mask makes that dust acceptable, and the shavings are special waste
What to do         choose another piece; hand this one to a waste site that takes it
Does not apply     painted wood, which can be tested
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", treated="yes"),
    effect=Effect.DO_NOT_MOUNT,
    says="Treated wood: arsenic, chromium or creosote in every speck of dust. Not on a lathe.",
    do="Use another piece; a waste site takes this one.",
    hard=True,
)
