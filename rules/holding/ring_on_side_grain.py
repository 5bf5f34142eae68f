"""Fine teeth hold poorly in side grain.

What it looks at   small drives on side-grain blanks
Why it matters     fibers bend away under fine teeth
What to do         two large spurs, a screw, a faceplate
Does not apply     end grain
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("toothed-ring-drive", "cup-drive", "point-and-pin-drive", "square-socket-drive"),
        grain="across",
    ),
    effect=Effect.NOT_ADVISED,
    says="A ring, cup or pin bites poorly in side grain.",
)
