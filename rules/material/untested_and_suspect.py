"""Stone and old moldings that may be asbestos wait for the laboratory.

What it looks at   a material suspected of asbestos or silica, stated untested
Why it matters     fibers in the lung stay there
What to do         send a wetted, bagged chip to an accredited laboratory
Does not apply     tested materials
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="untested", hard="yes", tested="no"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title}, untested: it may hold asbestos or silica, and nothing you can see tells.",
    do="{step}. Ask: {ask_whom}.",
    opens=("work.tested",),
    hard=True,
)
