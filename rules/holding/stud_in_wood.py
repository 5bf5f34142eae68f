"""A cast or drilled stud is for resin and stone.

What it looks at   a keyed stud in wood
Why it matters     it splits the wood it is let into
What to do         screws, a tenon
Does not apply     castings, stone, horn plugs
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="keyed-stud", family="wood"),
    effect=Effect.NOT_ADVISED,
    says="A keyed stud is for castings and stone; wood takes screws.",
)
