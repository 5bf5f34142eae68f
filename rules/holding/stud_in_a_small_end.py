"""A small end bursts round a stud.

What it looks at   the end of work on a keyed stud, under 30 mm
Why it matters     a stud of 8 mm leaves no wall, and the hole is where it breaks
What to do         a collet, or a glue block over the whole end
Does not apply     larger ends
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="keyed-stud", end_mm=below(30.0)),
    effect=Effect.NOT_ADVISED,
    says="Too small an end for a stud: no wall is left round the hole.",
)
