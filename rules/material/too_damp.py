"""Nuts, cones and fiber over a fifth water are wet.

What it looks at   plant stuff and others that must be dry, measured above 20 percent
Why it matters     it moves and cracks while it is held
What to do         dry it further
Does not apply     pieces at 20 percent or less
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("refusal", token="wet", moisture_percent=above(20.0)),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} above 20 percent moisture: it cracks and lets go as it dries.",
    do="Dry it first: {next_step}.",
    opens=("work.moisture",),
)
