"""A crack that runs right through lets the piece come apart on the lathe.

What it looks at   the condition through-crack, or a crack measured as wide as the piece
Why it matters     nothing but habit holds the halves together; the hold and the speed only decide where they land
What to do         saw along the crack and turn the sound part, or glue and bind it and start again as a new blank
Does not apply     cracks that end in sound wood; they are measured and limited
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", through_crack="yes"),
    effect=Effect.DO_NOT_MOUNT,
    says="A crack runs right through it: it is two pieces that happen to touch.",
    do="Saw it apart along the crack and turn the sound piece.",
    hard=True,
    opens=("work.condition",),
)
