"""What holds a green side-grain blank.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("reach", family="wood", grain="across", state="not-round", wet="yes"),
    effect=Effect.REACH,
    says="An old hand reaches first for screws on a faceplate, then a two-spur drive.",
    order=("faceplate-screws", "two-spur-drive", "spur-drive", "pin-chuck", "jaws-on-tenon", "screw-chuck"),
    row=150,
)
