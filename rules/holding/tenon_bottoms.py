"""A tenon that bottoms in the jaws has no shoulder.

What it looks at   tenon length against the depth of the jaws
Why it matters     the shoulder against the jaw faces is what resists rocking
What to do         shorten the tenon until the shoulder seats
Does not apply     tenons shorter than the jaws
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("jaws-on-tenon", "long-jaws"), depth_share=above(1.0)),
    effect=Effect.REFUSE,
    says="The tenon is longer than the jaws are deep: it bottoms, the shoulder stands off and it rocks loose.",
    opens=("hold.tenon.length",),
)
