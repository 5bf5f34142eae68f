"""What holds a spalted or burly side-grain blank.

What it looks at   shape, grain, state, size and wetness of the piece
Why it matters     which hold comes first is the trade's experience, not arithmetic
What to do         try them in this order; margins decide among equals
Does not apply     pieces of another kind, which have a row of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("reach", family="wood", grain="across", state="not-round", hidden="yes"),
    effect=Effect.REACH,
    says="An old hand reaches first for screws on a faceplate, then a faceplate on a waste block.",
    order=("faceplate-screws", "waste-block-faceplate", "two-spur-drive", "pin-chuck"),
    row=160,
)
