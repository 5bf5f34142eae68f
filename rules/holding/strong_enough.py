"""The hold carries the cut even on a bad day.

What it looks at   low and ordinary capacity against the peak of the cut
Why it matters     friction, strength and workmanship scatter by two to one
What to do         use it
Does not apply     holds judged by practice alone
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, fact

rule = Rule(
    when=fact("hold", model="yes", low=at_least(1.0), divided=at_least(1.0)),
    effect=Effect.SUITS,
    says="It carries the cut even with a poor grip.",
)
