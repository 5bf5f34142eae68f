"""Thrust falls by a third and more in the first minute.

What it looks at   work between centers
Why it matters     wood creeps under the center, green wood most
What to do         stop after a minute and at every stop
Does not apply     work in a chuck
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("thrust", between="yes"),
    effect=Effect.NOTE,
    says=(
        "Run it a minute, stop, and wind the tailstock up again: the centers bed in and the thrust drops. A hot "
        "live center means too much of it."
    ),
)
