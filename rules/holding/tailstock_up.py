"""The tailstock belongs up wherever it reaches.

What it looks at   holds with the tail center against the far end that do not live by it
Why it matters     it takes the tipping off the hold and keeps the piece there when the hold fails
What to do         bring it up snug, leave it up as long as the cut leaves room
Does not apply     drives between centers; hollowing, parting and drilling; lathes without a tailstock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("thrust", between="no"),
    effect=Effect.CHECK,
    says="Bring the tailstock up against the far end, snug, and leave it there as long as the cut leaves room.",
)
