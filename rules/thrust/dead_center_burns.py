"""A dry dead center burns the end.

What it looks at   a dead center at the tail
Why it matters     wood chars and loosens, plastic melts
What to do         lubricate, low thrust, recheck; a live center for plastics
Does not apply     live centers
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("thrust", tail=one_of("dead-point", "dead-cup")),
    effect=Effect.CAUTION,
    says=(
        "Dead center: wax, tallow or oil in the end, back it off until it turns free, look again every few "
        "minutes. Smoke or squeak: stop."
    ),
)
