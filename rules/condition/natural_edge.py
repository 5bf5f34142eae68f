"""A natural edge cuts air and throws bark.

What it looks at   the condition live-edge
Why it matters     the ghost edge strikes knuckles; loose bark leaves at speed
What to do         tap the bark, glue what is loose, keep the rest close, low feed
Does not apply     sawn blanks
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", live_edge="yes"),
    effect=Effect.WITH_CARE,
    says=(
        "A natural edge: half the turn is air, the bark may fly, and you cannot see the edge. Fingers stay "
        "behind the rest."
    ),
)
