"""A ring or pad that slips is a fuse.

What it looks at   the torque at which a drive meant to slip lets go against that of a hard catch
Why it matters     it lets go before wood, tool or hand does
What to do         let it slip; stop, look at the end, wind up, lighter cuts
Does not apply     seated teeth
Sources            model of thrust, constants from memory
"""

from advisor.rulebook import Effect, Rule, below, fact, one_of

rule = Rule(
    when=fact("drive", drive=one_of("ring", "cup", "none"), slip_high_over_catch=below(1.0)),
    effect=Effect.NOTE,
    says=(
        "This drive slips at {slip} (rough guide); a hard catch asks for {catch}. That is its job: stop, look"
        " at the end, wind up again."
    ),
    basis=(
        "tooth-model",
        "memory",
    ),
)
