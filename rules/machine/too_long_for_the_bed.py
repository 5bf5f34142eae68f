"""Work longer than the bed cannot be supported.

What it looks at   the length against the distance between centers
Why it matters     drive, center and drill take room besides
What to do         saw it shorter, or hold it through the spindle with a steady
Does not apply     work without the tailstock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("machine", bed_share=above(1.0), tail="up"),
    effect=Effect.DO_NOT_MOUNT,
    says="{length} does not fit between the centers ({bed}).",
    do="Saw it shorter, or pass it through the spindle bore with a steady.",
    opens=("work.length",),
)
