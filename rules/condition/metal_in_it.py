"""A nail in the wood breaks the edge and sparks.

What it looks at   the condition nails
Why it matters     the edge grabs, chips fly, and a spark in a dust bag is a fire
What to do         a magnet, a metal detector, and drilling the metal out; then give the case again without it
Does not apply     grit on the outside
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", nails="yes"),
    effect=Effect.ASK_FIRST,
    says="Nails or metal in it: find and remove every one before it is mounted.",
    do="Search with a magnet and a detector and take the metal out.",
    opens=("work.condition",),
)
