"""Three diameters out of the jaws asks for care.

What it looks at   overhang between three and four diameters, no tail
Why it matters     the jaw tips are the hinge
What to do         tailstock
Does not apply     short work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, all_of, at_most, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("three-jaw", "four-jaw-independent"),
        tail="away",
        overhang_ratio=all_of(above(3.0), at_most(4.0)),
    ),
    effect=Effect.HOLD_WITH_CARE,
    says="Over three diameters out of the jaws: light cuts, or the tailstock.",
)
