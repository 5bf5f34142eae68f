"""In a hard catch it turns in the hold.

What it looks at   what a hard catch asks of a chuck, plate or joint with the tail up
Why it matters     it is no fuse: the gripped wood is torn and no longer true, only the tail keeps it there
What to do         tail up, lighter cuts; after a catch stop and look at what was gripped
Does not apply     drives between centers; holds that stand a catch
Sources            common practice, no source; catch of 1 kN from memory
"""

from advisor.rulebook import Effect, Rule, above, fact, none_of

rule = Rule(
    when=fact("hold", group=none_of("between-centers"), slips="no", tail="up", catch=above(1.0)),
    effect=Effect.NOTE,
    says="In a hard catch it tears in the hold and only the tail keeps it: stop, look at the grip, start over.",
    basis=("common-practice", "memory"),
)
