"""Work left in the chuck loosens by itself.

What it looks at   the hours it stayed mounted
Why it matters     a grip that was tight yesterday is loose today
What to do         tighten, tug, turn by hand; take green work out overnight
Does not apply     work mounted just now
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("machine", hours_mounted=above(1.0)),
    effect=Effect.WITH_CARE,
    says="It has stood in the hold: wood shrinks and creeps. Tighten and tug it before the switch.",
)
