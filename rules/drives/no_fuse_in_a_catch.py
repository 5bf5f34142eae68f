"""Seated teeth hold through a catch.

What it looks at   the low end of the torque of seated teeth against that of a hard catch
Why it matters     nothing slips: the wood breaks, the tool is thrown or the motor stalls
What to do         a toothed ring where a fuse is wanted
Does not apply     rings, cups and pads; teeth that would tear out
Sources            model of seated teeth, constants from memory
"""

from advisor.rulebook import Effect, Rule, at_least, fact, one_of

rule = Rule(
    when=fact("drive", drive=one_of("four", "two"), slip_low_over_catch=at_least(1.0)),
    effect=Effect.NOTE,
    says=(
        "These teeth hold {slip}, more than a hard catch asks ({catch}): nothing slips. Where a fuse is "
        "wanted take a toothed ring or a cup."
    ),
    basis=(
        "tooth-model",
        "memory",
    ),
)
