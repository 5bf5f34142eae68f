"""A stud levers a check open.

What it looks at   a keyed stud in work with a check, a crack or rot
Why it matters     the stud is a wedge with a lever on it, and the stuff round it is all that holds it
What to do         fill it and let it cure, or glue a block on a sound face
Does not apply     sound work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="keyed-stud", faulty="yes"),
    effect=Effect.REFUSE,
    says="The stuff round the stud is cracked or soft: it levers the crack open and comes out.",
    opens=("work.condition", "hold.method"),
)
