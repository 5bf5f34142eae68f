"""What holds a dry side-grain blank to 10 in.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact

rule = Rule(
    when=fact("reach", family="wood", grain="across", state="not-round", wet="no", diameter_mm=at_most(254.0)),
    effect=Effect.REACH,
    says="An old hand reaches first for a screw chuck, then a spur drive.",
    order=(
        "screw-chuck",
        "spur-drive",
        "faceplate-screws",
        "jaws-on-tenon",
        "two-spur-drive",
        "pin-chuck",
        "waste-block-faceplate",
        "glue-block",
    ),
    row=180,
)
