"""A crack over more than a third of the section leaves too little wood to hold.

What it looks at   how far the crack reaches over the face, against the diameter
Why it matters     the sound part carries the whole pull, and the crack end runs at the first catch
What to do         saw the cracked part off, or split the blank at the crack and turn the pieces
Does not apply     shorter cracks, which lower the speed instead
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("blank", crack_across_share=above(1 / 3)),
    effect=Effect.DO_NOT_MOUNT,
    says="The crack reaches over more than a third of the piece.",
    do="Saw the cracked part off and measure again.",
    opens=("work.crack.across",),
)
