"""A plate of screws needs room for its circle.

What it looks at   a plate on screws and wood less than 75 mm across the end
Why it matters     the screws come too near the edge and split it
What to do         a screw chuck, a tenon or a spur drive
Does not apply     ends of 75 mm and more; clamps on what is not wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("faceplate-screws", "offset-faceplate"), family="wood", end_mm=below(75.0)),
    effect=Effect.NOT_ADVISED,
    says="The end is smaller than the smallest plate: screws so near the edge split it.",
)
