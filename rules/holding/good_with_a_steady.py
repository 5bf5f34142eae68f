"""A long piece in a chuck that a steady makes good.

What it looks at   the margin without and with a steady
Why it matters     the far end levers; a steady takes the lever away
What to do         turn a true band, set the steady on it without pushing, then cut
Does not apply     rough, square or oval stock, which no steady runs on
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, below, fact

rule = Rule(
    when=fact("hold", model="yes", slips="no", divided=below(1.0), steady_divided=at_least(1.0)),
    effect=Effect.HOLD_WITH_CARE,
    says="With a steady near the end it will do; without one it levers out.",
)
