"""A bar through the bore must be round.

What it looks at   a bar through the spindle that is neither round nor true
Why it matters     a jaw chuck in front grips it on two sides and what turns in the bore beats
What to do         turn it round first, or hold it between centers
Does not apply     round bars and tubes
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hold", method="through-spindle", state="not-round", form=none_of("round", "tube")),
    effect=Effect.REFUSE,
    says="Not round: the front hold touches it at two places and it beats in the bore.",
)
