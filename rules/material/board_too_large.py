"""Board bursts when it is large.

What it looks at   fiberboard over 200 mm across
Why it matters     it has no fibers that run from one side to the other
What to do         solid wood, or a smaller piece
Does not apply     smaller pieces; other board
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("refusal", token="large", family="board", diameter_mm=above(200.0)),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} over 200 mm across: it has no grain to hold it together at the rim.",
    do="{step}.",
    opens=("work.diameter",),
)
