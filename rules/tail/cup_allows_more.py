"""A ring at the tail lets more thrust through than a point.

What it looks at   the thrust that a live cup would allow against that of the present center, both in the model
Why it matters     a point pulls the end apart, a ring presses inside it and does not wander between hard and
                   soft rings
What to do         a live cup or ring center
Does not apply     ends where something else governs; cups
Sources            model of splitting, derived; common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("tail", cup_over_now=above(1.1)),
    effect=Effect.NOTE,
    says=(
        "A live cup at the tail would allow {cup_allowed} instead of {allowed}: a {center} pulls the end "
        "apart with {opening} of the thrust."
    ),
    basis=(
        "split-model",
        "common-practice",
    ),
)
