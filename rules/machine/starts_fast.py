"""A lathe whose lowest speed is over the advised start begins too briskly.

What it looks at   the lowest speed between the advised start and the ceiling
Why it matters     there is no gentle beginning
What to do         saw off what you can first; stand out of line at the switch
Does not apply     lathes that start lower
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, at_most, fact

rule = Rule(
    when=fact("machine", low_over_start=above(1.0), low_over_ceiling=at_most(1.0)),
    effect=Effect.WITH_CARE,
    says=(
        "The lathe's lowest speed ({low}) is over the start advised ({start}): stand clear and let it settle "
        "before you come near."
    ),
)
