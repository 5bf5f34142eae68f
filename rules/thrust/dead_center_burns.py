"""A dry dead center burns the end.

What it looks at   a dead center at the tail
Why it matters     wood chars and loosens
What to do         lubricate, low thrust, recheck
Does not apply     live centers; plastics, where no dead center will do
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of, one_of

rule = Rule(
    when=fact("tail", center=one_of("dead-point", "dead-cup"), family=none_of("plastic")),
    effect=Effect.CAUTION,
    says=(
        "Dead center: wax, tallow or oil in the end, back it off until it turns free, look again every few "
        "minutes. Smoke or squeak: stop."
    ),
)
