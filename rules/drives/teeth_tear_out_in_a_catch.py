"""In a hard catch seated teeth tear out.

What it looks at   the torque of seated teeth against that of a hard catch
Why it matters     torn out they bore the end like a drill
What to do         stop at once, seat the teeth again in fresh wood, lighter cuts
Does not apply     drives meant to slip; teeth that hold
Sources            model of seated teeth, constants from memory
"""

from advisor.rulebook import Effect, Rule, below, fact, one_of

rule = Rule(
    when=fact("drive", drive=one_of("four", "two"), slip_high_over_catch=below(1.0)),
    effect=Effect.NOTE,
    says=(
        "These teeth let go at {slip} (rough guide), a hard catch asks for {catch}: then they bore the end. "
        "Stop at once and seat them afresh."
    ),
    basis=(
        "tooth-model",
        "memory",
    ),
)
