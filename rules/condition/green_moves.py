"""Green wood shrinks out of its hold.

What it looks at   moisture green or wet, or assumed so
Why it matters     it shrinks and the center sinks in; a hold that was tight at noon is loose at two
What to do         tighten often; leave the tenon oversize to turn it round again
Does not apply     dry wood; frozen wood, which is told the same and more
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("blank", wet="yes", moisture=none_of("frozen")),
    effect=Effect.CHECK,
    says="Wet wood: tighten after the first minute and at every stop, and never leave it mounted overnight.",
)
