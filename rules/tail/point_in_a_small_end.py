"""A point splits small ends.

What it looks at   a point or cone in end grain of wood under 25 mm
Why it matters     it wedges the two halves apart
What to do         a cup, or a flat pad; drill for the point and keep the thrust low
Does not apply     larger ends, bored work, side grain, cups
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact, none_of, one_of

rule = Rule(
    when=fact(
        "tail",
        center=one_of("live-point", "dead-point", "live-cone"),
        bored="no",
        family="wood",
        grain=none_of("across"),
        end_mm=below(25.0),
    ),
    effect=Effect.CAUTION,
    says=("A point or cone splits an end of {end}: take a small cup, or drill for the point and keep the thrust low."),
)
