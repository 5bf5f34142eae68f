"""Jaws cannot close on a tenon under their smallest size.

What it looks at   the diameter the jaws close on against the smallest they take
Why it matters     they meet before they touch the work
What to do         cut the tenon larger, or fit smaller jaws
Does not apply     tenons within their range; chucks whose range nobody gave
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact, one_of

rule = Rule(
    when=fact(
        "hold", method=one_of("jaws-on-tenon", "long-jaws", "three-jaw", "four-jaw-independent"), close_share=below(1.0)
    ),
    effect=Effect.REFUSE,
    says="The jaws meet before they close on it.",
    opens=("hold.tenon.diameter", "hold.chuck.jaw_smallest"),
)
