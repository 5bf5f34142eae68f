"""Teeth that are only pressed ask for far more.

What it looks at   the thrust of unseated teeth against that of seated ones
Why it matters     that is why nobody winds it: the end splits before the teeth bite
What to do         seat the teeth first
Does not apply     teeth seated already; rings and cups
Sources            model of pressed teeth, constants from memory
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("thrust", seated="advised", pressed_over_set=above(1.5)),
    effect=Effect.NOTE,
    says="Without seating the teeth this cut would ask for {pressed} of thrust instead of {set}.",
    basis=(
        "tooth-model",
        "memory",
    ),
)
