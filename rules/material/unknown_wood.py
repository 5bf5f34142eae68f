"""Unknown wood may sensitize, and its strength is a guess.

What it looks at   wood given as unknown, of any ordinary size
Why it matters     about one wood in ten that people bring home is a strong sensitizer
What to do         have it named, or use extraction and a mask and start with a small sound piece
Does not apply     small sound pieces with extraction and a mask stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, fact

rule = Rule(
    when=fact("blank", match="unknown", diameter_mm=at_least(152.4)),
    effect=Effect.ASK_FIRST,
    says="Nobody knows this wood: worst values are used, and nobody knows what its dust does to you.",
    do="Have it named, or start with a small sound piece, extraction on and a mask fitted.",
    opens=("work.material", "person.extraction", "person.respirator"),
)
