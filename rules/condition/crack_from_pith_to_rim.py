"""A crack from the pith to the rim is half of a through crack.

What it looks at   the stated run of the crack
Why it matters     wood at the rim pulls it open as soon as it turns
What to do         saw the blank in two through the pith and turn the halves
Does not apply     cracks along the axis or across a face
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", crack_runs="pith-to-rim"),
    effect=Effect.DO_NOT_MOUNT,
    says="The crack runs from the pith to the rim: one catch makes it go right through.",
    do="Saw it in two through the pith and turn the halves.",
    opens=("work.crack.runs",),
)
