"""A speed left set over the ceiling is a trap at the switch.

What it looks at   the speed as it stands now against the ceiling
Why it matters     people have been killed by yesterday's setting
What to do         turn the dial or move the belt before the plug goes in
Does not apply     a setting under the ceiling
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("machine", set_share=above(1.0)),
    effect=Effect.WITH_CARE,
    says="The lathe stands at a speed over the ceiling: turn it down to {start} before the switch.",
)
