"""Other people breathe the same dust.

What it looks at   others in the room
Why it matters     they wear no shield and no mask
What to do         send them out or behind a screen, out of line
Does not apply     working alone with somebody in call
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("person", others="yes"),
    effect=Effect.CAUTION,
    says="Others are in the room: nobody in the plane of the work, and they breathe your dust.",
)
