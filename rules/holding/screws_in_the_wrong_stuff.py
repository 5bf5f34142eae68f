"""Wood screws and spurs do not hold in plastic, laminate, resin, stone or horn.

What it looks at   screws and teeth in what is not wood
Why it matters     layers part, resin cracks, plastic strips
What to do         jaws all round, or a glued block where glue holds
Does not apply     wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("faceplate-screws", "screw-chuck", "spur-drive", "two-spur-drive", "toothed-ring-drive"),
        family=one_of("plastic", "laminate", "resin", "stone", "animal", "metal", "hybrid"),
    ),
    effect=Effect.REFUSE,
    says="Wood screws and spurs split or strip this material.",
)
