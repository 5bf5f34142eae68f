"""A clamping ring levers a cracked rim apart.

What it looks at   checks, cracks and rot in work under a clamping ring
Why it matters     the ring bears on the rim and the bolts are never quite even
What to do         a friction block under the tailstock
Does not apply     sound work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="ring-clamp-plate", faulty="yes"),
    effect=Effect.REFUSE,
    says="The ring bears on the rim and levers the crack open.",
    opens=("work.condition", "hold.method"),
)
