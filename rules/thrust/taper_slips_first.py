"""The taper of the center can turn in the spindle before the teeth slip.

What it looks at   the torque the taper carries at this thrust against the peak of the cut
Why it matters     a spinning taper scores the spindle
What to do         clean, dry, tapped home; drawbar; a drive held in a chuck
Does not apply     drives held in a chuck; seated tapers that carry it
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("thrust", taper_over_need=below(1.0)),
    effect=Effect.WITH_CARE,
    says=(
        "At this thrust the shank's taper carries less than the peak of this cut: clean, dry and tapped home off the "
        "work, or with a drawbar, it carries more."
    ),
)
