"""A long overhang levers out of short jaws.

What it looks at   overhang over four diameters, no tail, no steady
Why it matters     the jaw tips are the hinge
What to do         tailstock or steady
Does not apply     supported work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact(
        "hold", method=one_of("three-jaw", "four-jaw-independent"), tail="away", steady="no", overhang_ratio=above(4.0)
    ),
    effect=Effect.REFUSE,
    says="Over four diameters out of the jaws with no tailstock and no steady.",
)
