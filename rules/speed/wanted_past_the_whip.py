"""Nobody runs a long bar through its whip to the quiet beyond.

What it looks at   the speed wanted against the speed at which this bar whirls
Why it matters     on the way through it bows out, and wood that bows breaks
What to do         stay under it, or steady the bar so that it whips later
Does not apply     speeds under six tenths of the whip; bars too short to whip
Sources            beam vibration theory; common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("speed", wanted_over_whirl=above(0.6)),
    effect=Effect.CAUTION,
    says=(
        "It whips between {whip_from} and {whip_to}: never stay there and never run through it to {wanted}. A steady "
        "lifts it."
    ),
    basis=("beam-vibration", "common-practice"),
)
