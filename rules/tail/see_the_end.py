"""A slim center where the end is to be seen.

What it looks at   knobs, balls, handles and boxes whose tail end the center covers by more than half
Why it matters     the tool cannot reach the end, and nobody sees the curve run out
What to do         a slim live point or a small cup, or the center away for the last light cuts
Does not apply     slim centers; ends that are cut off
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact("tail", purpose=one_of("knob", "sphere", "handle", "box"), width_share=above(0.5)),
    effect=Effect.NOTE,
    says=(
        "The {center} covers {width} of an end of {end}: to see and turn the end take a slim point or a smaller cup."
    ),
)
