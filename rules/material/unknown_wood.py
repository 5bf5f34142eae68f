"""Unknown wood may sensitize, and its strength is a guess.

What it looks at   wood given as unknown, from 6 in across
Why it matters     some woods people bring home are strong sensitizers, and nothing tells which
What to do         have it named, or use extraction and a mask and start with a small sound piece
Does not apply     small pieces, which have rules of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, fact

rule = Rule(
    when=fact("name", match="unknown", diameter_mm=at_least(152.4)),
    effect=Effect.ASK_FIRST,
    says="Nobody knows this wood: worst values are used, and nobody knows what its dust does to you.",
    do="Have it named, or start with a small sound piece, extraction on and a mask fitted.",
    opens=("work.material", "person.extraction", "person.respirator"),
)
