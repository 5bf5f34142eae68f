"""A blank close to the swing may strike as it moves.

What it looks at   a swept diameter within a twentieth of the swing
Why it matters     corners, bark and a bow take up that hair
What to do         saw the corners off first
Does not apply     work well inside the swing
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, all_of, at_most, fact

rule = Rule(
    when=fact("machine", swing_share=all_of(above(0.95), at_most(1.0))),
    effect=Effect.WITH_CARE,
    says="It clears the bed by a hair: turn it by hand through two full turns with the rest in place.",
)
