"""Wood dust rusts and laps a metal lathe.

What it looks at   work on a metal-cutting lathe
Why it matters     tannin rusts slideways in hours, dust in oil is lapping paste, a spark in dust is a fire
What to do         cover, vacuum first, then wipe, then oil; separate bags
Does not apply     wood lathes
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("machine", machine="metal-lathe"),
    effect=Effect.CAUTION,
    says=(
        "Cover the ways so that the cover cannot be snatched; vacuum, wipe and oil after. Wood dust and hot "
        "steel chips never in one bag."
    ),
)
