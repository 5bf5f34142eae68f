"""Plastics melt on a dead center.

What it looks at   a dead center in a plastic
Why it matters     rubbing melts acetal, nylon and acrylic in seconds; the work comes loose
What to do         a live center
Does not apply     live centers; wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("tail", center=one_of("dead-point", "dead-cup"), family="plastic"),
    effect=Effect.ASK_FIRST,
    says="A dead center melts its way into plastic and the work comes loose.",
    do="Use a live center.",
    opens=("hold.tail.kind",),
)
