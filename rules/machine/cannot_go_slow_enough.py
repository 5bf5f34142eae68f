"""A lathe whose lowest speed is over the ceiling cannot turn this.

What it looks at   the lowest speed of the lathe against the ceiling
Why it matters     the first switch-on would be past the limit
What to do         saw it rounder, move the centers, take a lower pulley or another machine
Does not apply     lathes that go slower than the ceiling
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("machine", low_over_ceiling=above(1.0)),
    effect=Effect.DO_NOT_MOUNT,
    says=(
        "As set up it cannot go slow enough: the lathe's lowest speed is {low} and the ceiling is {ceiling} "
        "({governed_by})."
    ),
    do="Saw it rounder, move the centers to balance it, take a lower pulley, or another machine.",
    opens=("work.offset", "machine.min_rpm"),
)
