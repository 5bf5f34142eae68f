"""A dial left where the bar whips.

What it looks at   the speed now set on the machine against the speed at which this bar whirls
Why it matters     between six tenths and thirteen tenths of it a long bar bows out and leaves the lathe
What to do         set it back before the switch
Does not apply     bars too short to whip; a dial set lower
Sources            beam vibration theory; common practice, no source
"""

from advisor.rulebook import Effect, Rule, between, fact

rule = Rule(
    when=fact("speed", set_over_whirl=between(0.6, 1.3)),
    effect=Effect.CAUTION,
    says="The dial stands at {set}, where it whips ({whip_from} to {whip_to}): set it back before the switch.",
    basis=("beam-vibration", "common-practice"),
)
