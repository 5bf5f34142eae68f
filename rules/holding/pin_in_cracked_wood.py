"""A pin in a cracked hole lets go.

What it looks at   a pin chuck in cracked, punky or rotten wood
Why it matters     the pin presses the crack open
What to do         screws in sound wood
Does not apply     sound wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="pin-chuck", faulty="yes"),
    effect=Effect.REFUSE,
    says="A pin in cracked or soft wood opens the hole and lets go.",
)
