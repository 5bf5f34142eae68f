"""Jaws spreading in cracked or soft wood open it.

What it looks at   a recess in checked, cracked, punky or rotten wood
Why it matters     the jaws are a wedge in a crack
What to do         screws, or a tenon across the crack
Does not apply     sound wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="jaws-in-recess", faulty="yes"),
    effect=Effect.REFUSE,
    says="Opening jaws in cracked or soft wood: pieces have flown apart that way.",
)
