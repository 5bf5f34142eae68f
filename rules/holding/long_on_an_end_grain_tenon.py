"""More than four tenon diameters out of an end-grain tenon levers out.

What it looks at   overhang against tenon diameter, end grain, no tail, no steady
Why it matters     every cut at the end levers it out
What to do         tailstock or steady
Does not apply     shorter work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("jaws-on-tenon", "long-jaws"),
        grain="along",
        tail="away",
        steady="no",
        overhang_ratio=above(4.0),
    ),
    effect=Effect.REFUSE,
    says="It stands out more than four tenon diameters with no tailstock and no steady.",
)
