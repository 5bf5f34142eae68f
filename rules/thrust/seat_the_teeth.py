"""Teeth that only lean on the wood need thrust nobody should wind.

What it looks at   a spur drive whose seating was not given
Why it matters     pressed-only teeth ask for several times the thrust; a hammer on the spindle ruins its bearings
What to do         pop a center mark, drill for the point, saw a cross kerf in hard wood, drive the center in on the
                   bench
Does not apply     teeth already seated; rings and cups
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("thrust", seated="advised", drive=one_of("four", "two")),
    effect=Effect.CHECK,
    says=(
        "Seat the teeth {depth} deep before the lathe turns: on the bench with a soft mallet, never with the "
        "drive in the spindle."
    ),
)
