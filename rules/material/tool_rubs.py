"""A chip too thin is no chip.

What it looks at   a toolpost feed below 0.05 mm a turn
Why it matters     the edge rubs instead of cutting: heat, burnish, melting, a dull edge
What to do         more feed, or less speed and a keener edge
Does not apply     hand tools; feeds of 0.05 mm and more; metals that flare, which ask for more
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("tool", tool="carriage", flares="no", chip_mm=below(0.05)),
    effect=Effect.CAUTION,
    says="A feed of {chip_mm} mm a turn rubs instead of cutting: more feed or a keener edge.",
)
