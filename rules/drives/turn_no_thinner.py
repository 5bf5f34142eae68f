"""Near the drive the tool keeps above its teeth.

What it looks at   the outside diameter of the drive with 3 mm of wood round it
Why it matters     an edge that meets hardened teeth is spoiled, and teeth without wood round them break out
What to do         stop there, or leave that much as waste to part off
Does not apply     ends too small for any cut at the drive; chucks
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact

rule = Rule(
    when=fact("drive", least_over_end=at_most(1.0)),
    effect=Effect.NOTE,
    says=(
        "Within {reach} of the driven end turn no thinner than {least}, or leave that much there as waste; "
        "further in the drive is no bar."
    ),
)
