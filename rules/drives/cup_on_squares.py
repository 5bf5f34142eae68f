"""A cup slips at the corners of a square.

What it looks at   a cup as the drive on work that is not round
Why it matters     every corner is a blow, and a smooth ring holds by friction alone
What to do         light cuts until it is round, or seated teeth
Does not apply     work that runs true; teeth and toothed rings
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("drive", drive="cup", state="not-round"),
    effect=Effect.WITH_CARE,
    says=("Light cuts only until it runs round: a cup slips at every corner. A four-tooth drive roughs squares."),
    do="A four-tooth drive, its teeth seated.",
    window="narrow",
    opens=("hold.method",),
)
