"""A drive that slips is a fuse.

What it looks at   what a hard catch asks of a drive meant to slip, tool held by hand
Why it matters     it lets go first and the work stands still between the centers
What to do         let it slip; stop, look at the end, set it again
Does not apply     spurs and chucks; a carriage tool, whose feed goes on
Sources            common practice, no source; catch of 1 kN from memory
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", slips="yes", catch=above(1.0)),
    effect=Effect.NOTE,
    says="In a hard catch it slips and the work stays between the centers: a fuse.",
    basis=("common-practice", "memory"),
)
