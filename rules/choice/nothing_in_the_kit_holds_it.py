"""Nothing to hand holds this piece.

What it looks at   the best verdict over the kit and the chosen method
Why it matters     mounting it in the least bad hold is how people get hurt
What to do         make or get the one hold named: what can be made from what is there comes before a purchase
Does not apply     kits with a sound hold; cases without a kit
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("choice", limited="yes", best_verdict=one_of("refused", "not-advised", "could-not-check")),
    effect=Effect.DO_NOT_MOUNT,
    says="As set up, nothing to hand holds it. {reason}",
    do="What would do it: {would_do}.",
    opens=("hold.kit",),
)
