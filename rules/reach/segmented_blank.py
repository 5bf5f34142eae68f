"""What holds a segmented blank.

What it looks at   shape, grain and state of the piece
Why it matters     a screw or a spur in glued rings bears on few of the segments and splits them apart
What to do         try them in this order; margins decide among equals
Does not apply     segmented work that is round, which is held like any other
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("reach", family="wood", grain="across", state="not-round", form="segmented"),
    effect=Effect.REACH,
    says="An old hand reaches first for a faceplate on a waste block, then a glue block.",
    order=("waste-block-faceplate", "glue-block", "faceplate-screws", "jaws-on-tenon", "screw-chuck"),
    row=158,
)
