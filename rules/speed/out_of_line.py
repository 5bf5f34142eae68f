"""The blank leaves in its own plane.

What it looks at   every job under power
Why it matters     what lets go leaves at right angles to the axis
What to do         stand at the headstock or tail side at every start and every change of speed
Does not apply     turning by hand with the power off
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("speed", operation=none_of("balancing")),
    effect=Effect.CAUTION,
    says="Key out, sleeves close, rest locked, stand out of the plane of the work, stop within reach.",
)
