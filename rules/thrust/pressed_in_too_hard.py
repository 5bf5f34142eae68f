"""Pressing teeth in with the tailstock takes more than the wood stands.

What it looks at   the force that presses the teeth to depth against splitting of that end and the center's rating
Why it matters     it splits the end or heats the bearing before the teeth are in
What to do         cross kerf and center hole, then the mallet, on the bench
Does not apply     soft wood, where the tailstock does it
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("thrust", seated="advised", press_over_limit=above(1.0)),
    effect=Effect.CHECK,
    says=(
        "Do not press the teeth in with the tailstock: it would take more than this end stands. Kerf and "
        "mallet on the bench."
    ),
)
