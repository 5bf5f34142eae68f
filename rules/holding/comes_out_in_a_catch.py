"""In a hard catch it comes out of the hold.

What it looks at   what a hard catch asks of a chuck, plate or joint with nothing at the far end
Why it matters     a slip in a chuck is no fuse: the piece tips out and flies
What to do         tailstock up, light cuts, stand out of its line
Does not apply     holds with the tail up; drives between centers; holds without a model
Sources            common practice, no source; catch of 1 kN from memory
"""

from advisor.rulebook import Effect, Rule, above, fact, none_of

rule = Rule(
    when=fact("hold", group=none_of("between-centers"), slips="no", tail="away", catch=above(1.0)),
    effect=Effect.NOTE,
    says="In a hard catch it comes out and flies: light cuts, and stand out of its line.",
    basis=("common-practice", "memory"),
)
