"""Between too little and too much thrust there is little room.

What it looks at   the thrust to set against the most allowed, more than two thirds
Why it matters     a heaved handwheel passes both ends of it
What to do         set it by feel with two fingers and read the handwheel torque; a cup or a steady widens it
Does not apply     wide windows
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, at_least, fact

rule = Rule(
    when=fact("thrust", light_share=at_least(1.0), set_over_allowed=above(2 / 3)),
    effect=Effect.WITH_CARE,
    says="The thrust window is narrow: set {set}, {allowed} is the most ({why}).",
    window="narrow",
    opens=("hold.tail.kind",),
)
