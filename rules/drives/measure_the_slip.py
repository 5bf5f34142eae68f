"""What a drive carries is known to a factor of two.

What it looks at   a drive whose slip nobody measured
Why it matters     nobody has published slip tests of such drives
What to do         a torque wrench on a scrap blank at the thrust that is set, and the pair into hold.slip_test
Does not apply     drives with a measured pair; sockets, dogs and mandrels
Sources            looked for and not found; constants from memory
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact("drive", tested="no", drive=one_of("four", "two", "ring", "cup"), slip_low_over_catch=above(0.0)),
    effect=Effect.NOTE,
    says=(
        "What this drive carries is a rough guide, within a factor of about two: measure it on a scrap with a"
        " torque wrench, power off, and give the pair as hold.slip_test."
    ),
    basis=("memory",),
)
