"""A jam fit opens a crack.

What it looks at   a jam chuck with cracked, punky or rotten wood
Why it matters     hoop tension at the crack
What to do         tape, suction, a friction block
Does not apply     sound wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="jam-chuck", faulty="yes"),
    effect=Effect.REFUSE,
    says="A press fit in or over cracked or soft wood opens it.",
)
