"""A heavy lopsided blank deserves a balance test.

What it looks at   work over 5 kg, not round, whose offset was guessed from its shape
Why it matters     the guess is on the heavy side and costs you speed
What to do         weight times radius is all that is needed
Does not apply     measured or light work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("speed", state="not-round", mass_kg=above(5.0), offset_from="shape"),
    effect=Effect.CHECK,
    says=(
        "Free the spindle and let the heavy side fall; tape a weight opposite until it stays anywhere: give "
        "it as balance_test."
    ),
)
