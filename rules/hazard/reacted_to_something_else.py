"""A body that reacted once may do so again.

What it looks at   somebody who has reacted to a wood or material with no known relation to this one
Why it matters     cross reactions happen between things with no relation at all
What to do         watch skin and breath; stop at the first sign
Does not apply     related woods and materials, which count for more; people who never reacted
Sources            HSE Woodworking Information Sheet No 30, Toxic woods
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("name", reacted="unrelated"),
    effect=Effect.NOTE,
    says=(
        'You have reacted to {reacted_to}. No relation to "{material}" is known here; cross reactions happen. '
        "Stop at the first sign."
    ),
    basis=("hse-wis30",),
)
