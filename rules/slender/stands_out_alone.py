"""A long piece without the tailstock levers out of its hold.

What it looks at   free length over four diameters with no tailstock
Why it matters     every cut at the end is a lever on the hold
What to do         a steady near the end
Does not apply     work under the tailstock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("slender", tail="away", ratio=above(4.0), steady="no", grain="along"),
    effect=Effect.WITH_CARE,
    says=(
        "It stands out {ratio} diameters with nothing at the far end: a steady, or leave the tailstock up as "
        "long as you can."
    ),
)
