"""More than two tenon diameters without the tailstock asks for care.

What it looks at   overhang between two and four tenon diameters, no tail
Why it matters     the hold works as a lever's short end
What to do         light cuts, tailstock as long as it can stay
Does not apply     short work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, all_of, at_most, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("jaws-on-tenon", "long-jaws"),
        tail="away",
        overhang_ratio=all_of(above(2.0), at_most(4.0)),
    ),
    effect=Effect.HOLD_WITH_CARE,
    says="It stands well out of the jaws: light cuts near the end, tighten often.",
)
