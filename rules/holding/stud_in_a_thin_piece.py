"""A thin piece has no depth for a stud.

What it looks at   the length of work on a keyed stud, under 30 mm
Why it matters     the stud must go in by two of its diameters and leave sound stuff before the tool
What to do         glue a block on, or tape for a thin disc
Does not apply     longer work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="keyed-stud", length_mm=below(30.0)),
    effect=Effect.REFUSE,
    says="Too thin for a stud: it needs 20 mm of depth and sound stuff behind it.",
    opens=("hold.method",),
)
