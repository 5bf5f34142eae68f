"""Tape does not take blows.

What it looks at   tape on work out of round
Why it matters     it creeps and peels
What to do         saw it round and true the edge with the tail up, or glue it
Does not apply     round work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="double-sided-tape", state="not-round"),
    effect=Effect.NOT_ADVISED,
    says="Tape lets go at the first interrupted cut.",
)
