"""A tail center that wobbles walks the work out.

What it looks at   any work with the tailstock up
Why it matters     a center that runs out works the end loose turn by turn
What to do         clean both tapers, seat it again, turn it in its socket; then bearing or point
Does not apply     work without the tailstock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, present

rule = Rule(
    when=fact("tail", center=present),
    effect=Effect.NOTE,
    says=(
        "Turn the tail center by hand against an indicator or a pencil: more than 0.1 mm on wood or 0.02 mm "
        "on metal and plastic, clean both tapers and seat it again; if it stays, new bearing or point."
    ),
)
