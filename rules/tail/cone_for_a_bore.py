"""A bored end sits on a cone.

What it looks at   a tube or ring with another center than a cone at the tail
Why it matters     a point has nothing to stand in, a cup bears on the thin wall
What to do         a cone of 60 degrees or a bull-nose that fills the bore
Does not apply     solid ends; work on an arbor, which has the center in it
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("tail", bored="yes", center=none_of("live-cone")),
    effect=Effect.CHECK,
    says=(
        "Bored end: carry it on a cone or bull-nose that fills the bore, or on a turned plug where the bore is wider "
        "than any cone; thrust light, the wall splits from inside."
    ),
)
