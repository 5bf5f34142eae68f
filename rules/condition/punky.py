"""Punky wood crumbles in the hold.

What it looks at   the condition punky
Why it matters     the hold tears out and the soft part throws lumps
What to do         put the hold in the hard part, soak the soft with thin resin and let it cure, wrap the outside
Does not apply     spalted wood that a thumbnail does not dent
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", punky="yes"),
    effect=Effect.ASK_FIRST,
    says="Punky wood: is it sound where it is held, and over three quarters of the section?",
    do="Press a thumbnail into the wood where it will be held: if it dents, move the hold or leave it.",
    opens=("work.condition",),
)
