"""No thrust drives this work without splitting, crushing or bowing it.

What it looks at   the thrust the drive needs for the stated cutting force against what ends and bar allow
Why it matters     between the two there is nothing to set: a compromise splits the work or spins it on its teeth
What to do         seat the teeth first; a cup instead of a point; grip one end; a steady
Does not apply     a drive that cannot turn its dead center at all; work held in a chuck, where the tail only locates
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("thrust", turns="yes", force_given="yes", cut_over_least=below(1.0)),
    effect=Effect.ASK_FIRST,
    says=("No safe thrust with these centers: {short}. Change the center, grip one end, or steady it."),
    do="Change the center, grip one end, or steady it.",
    window="empty",
    opens=("hold.tail.kind", "hold.drive.seated_depth", "hold.method", "hold.steady"),
)
