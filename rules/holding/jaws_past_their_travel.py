"""Jaws opened past their travel drop off their scroll.

What it looks at   the diameter the jaws close on against the largest they take
Why it matters     past the mark few threads hold a jaw and it flies out
What to do         cut the tenon smaller, or fit larger jaws
Does not apply     tenons within their range; chucks whose range nobody gave
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact(
        "hold", method=one_of("jaws-on-tenon", "long-jaws", "three-jaw", "four-jaw-independent"), open_share=above(1.0)
    ),
    effect=Effect.REFUSE,
    says="The jaws would be open past their travel mark: too few threads hold them.",
    opens=("hold.tenon.diameter", "hold.chuck.jaw_largest"),
)
