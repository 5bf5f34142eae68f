"""A hole in the hold is no hold.

What it looks at   board, castings and pods with a void stated
Why it matters     what is gripped or glued there lets go
What to do         saw or turn to sound stuff where it is held; then say so
Does not apply     pieces with no void stated; wood, which has a rule of its own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="void-at-hold", void="yes"),
    effect=Effect.ASK_FIRST,
    says="{title} with a void: is every hole clear of the place where it is held?",
    do="Cut back to solid stuff where it is held, then leave the void out of the case.",
    opens=("work.condition",),
)
