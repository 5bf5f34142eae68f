"""A tail center wider than the finished end is cut by the tool.

What it looks at   the width of the center in the wood against the smallest finished size near it
Why it matters     the edge meets hardened steel
What to do         leave a stub at the tail, or a slimmer center
Does not apply     centers under the finished size; ends that are cut off
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("tail", near_share=above(1.0)),
    effect=Effect.CAUTION,
    says=(
        "The tail center stands {width} wide in an end that finishes at {near}: leave a stub of {reach} or "
        "more there, or take a slimmer center."
    ),
)
