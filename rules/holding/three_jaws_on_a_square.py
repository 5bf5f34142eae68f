"""Three jaws grip only what is round or hexagonal.

What it looks at   three jaws on stock that is not round
Why it matters     two jaws hold and the third pretends
What to do         independent jaws, or turn it round first
Does not apply     round stock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method="three-jaw",
        state="not-round",
        form=one_of("square", "octagon", "log", "half-log", "slab", "irregular", "segmented", "disc"),
    ),
    effect=Effect.REFUSE,
    says="Three jaws touch a square or rough piece at two places.",
)
