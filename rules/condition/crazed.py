"""Crazed plastic shatters.

What it looks at   the condition stress-crazed
Why it matters     solvent or stress has cracked it all through
What to do         choose another piece and keep solvents away from it
Does not apply     clear plastic without crazing
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", stress_crazed="yes"),
    effect=Effect.DO_NOT_MOUNT,
    says="It is crazed: the next catch shatters it.",
    do="Use another piece; keep solvents off it.",
    opens=("work.condition",),
)
