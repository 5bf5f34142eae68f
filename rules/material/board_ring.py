"""A thin ring of board bursts.

What it looks at   fiberboard as a ring
Why it matters     the ring carries its own pull, and board has none of its own strength to give
What to do         solid wood, or glue the ring up from segments
Does not apply     discs and blocks; other board
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="large", family="board", form="ring"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} as a ring bursts: nothing in it runs round the rim.",
    do="{step}.",
    opens=("work.form",),
)
