"""A dead center makes heat with thrust, radius and speed.

What it looks at   heat of the rubbing at the starting speed against 10 W in wood, 3 W in anything else
Why it matters     above it wood chars and the center works loose
What to do         less thrust, less speed, lubricant, or a live center
Does not apply     live centers; slow and light work
Sources            statics; the two powers from memory
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("tail", heat_over_cap=above(1.0)),
    effect=Effect.CAUTION,
    says=(
        "The dead center makes about {heat} at {rpm} if it runs dry, more than the {cap} the end stands: "
        "slower, lubricated, or a live center."
    ),
    basis=(
        "statics",
        "memory",
    ),
)
