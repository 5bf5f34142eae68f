"""Who has reacted to a material reacts to less of it.

What it looks at   a material, or a resin like it, named among those the person reacted to
Why it matters     once sensitized, very little is enough, and the next time may be worse
What to do         another material; a physician
Does not apply     materials with no relation to the one that did it
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("material", reacted=one_of("same", "near")),
    effect=Effect.ASK_FIRST,
    says="You have reacted to {thing} or its like: the next time may be worse. Ask a physician.",
    do="Choose another material, or ask a physician first.",
    opens=("work.material",),
)
