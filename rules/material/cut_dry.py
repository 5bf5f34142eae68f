"""Shell and pearl are worked wet.

What it looks at   shell and other materials whose dust is kept down with water, stated to be cut dry
Why it matters     lime and protein dust irritates lungs and can start an asthma
What to do         work it wet, the machine covered
Does not apply     materials worked dry; stone, which is refused for good
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("refusal", token="dry", hard="no", cooling=one_of("dry", "air")),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} is worked wet, not dry.",
    do="Work it wet, or {next_step}.",
    opens=("cut.cooling",),
)
