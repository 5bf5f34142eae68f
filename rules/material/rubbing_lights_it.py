"""A tool that rubs lights magnesium.

What it looks at   a feed below 0.1 mm a turn in magnesium or titanium
Why it matters     thin chips and rubbing heat make it flare
What to do         0.1 mm a turn or more, keen and well relieved, never dwelling
Does not apply     other metals; coarser feeds
Sources            T.O. 1-1A-9, machining of magnesium
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("tool", flares="yes", chip_mm=below(0.1)),
    effect=Effect.ASK_FIRST,
    says="A feed of {chip_mm} mm a turn rubs {thing} until it lights: 0.1 mm or more, and never dwell.",
    do="Feed 0.1 mm a turn or more.",
    opens=("cut.feed",),
    basis=("to-1-1a-9-magnesium",),
)
