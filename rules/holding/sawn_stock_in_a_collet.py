"""A collet grips only what was turned to size.

What it looks at   a full-circle grip on stock that is not round
Why it matters     it touches at the corners
What to do         turn a spigot between centers first
Does not apply     turned stock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("collet", "collet-block", "split-bushing", "soft-jaws"),
        state="not-round",
        form=none_of("round", "tube", "ring", "sphere"),
    ),
    effect=Effect.REFUSE,
    says="Turn it to size first: a collet, sleeve or bored jaw needs a true round.",
)
