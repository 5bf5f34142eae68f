"""Nuts, cones and fiber are dried first.

What it looks at   plant stuff and others that must be dry, stated wet
Why it matters     it cracks as it dries on the lathe, and nothing sticks to it
What to do         dry it for weeks, or in an oven where it is a cone
Does not apply     dry pieces
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("refusal", token="wet", moisture=one_of("wet", "green", "frozen")),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} that is wet: it cracks and lets go as it dries.",
    do="Dry it first: {next_step}.",
    opens=("work.moisture",),
)
