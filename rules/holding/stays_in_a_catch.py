"""A hard catch does not tear it out.

What it looks at   what a hard catch asks of a chuck, plate or joint
Why it matters     something else gives: the wood breaks, the tool is thrown or the motor stalls
What to do         light cuts; after a catch look at wood and hold all the same
Does not apply     drives between centers; holds a catch tears out
Sources            common practice, no source; catch of 1 kN from memory
"""

from advisor.rulebook import Effect, Rule, at_most, fact, none_of

rule = Rule(
    when=fact("hold", group=none_of("between-centers"), slips="no", catch=at_most(1.0)),
    effect=Effect.NOTE,
    says="It stands a hard catch: the wood, the tool or the motor gives instead.",
    basis=("common-practice", "memory"),
)
