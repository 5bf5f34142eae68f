"""No ordinary hold takes this piece as it is.

What it looks at   the best verdict over all methods
Why it matters     something about the piece defeats them all
What to do         the single change the answer names, tried in the model; else another piece
Does not apply     pieces with an accepted hold
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("choice", limited="no", best_verdict=one_of("refused", "not-advised", "could-not-check")),
    effect=Effect.ASK_FIRST,
    says="No ordinary hold takes it as it is. {reason}",
    do="What would let one hold: {would_do}.",
    opens=("hold.method",),
)
