"""A friction block holds only round, light work.

What it looks at   a friction block on work out of round
Why it matters     blows walk it off the pad
What to do         spurs, screws or jaws first
Does not apply     clearing a foot, truing a dry tenon
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="friction-block", state="not-round"),
    effect=Effect.NOT_ADVISED,
    says="A friction block slips on a piece that is not yet round.",
)
