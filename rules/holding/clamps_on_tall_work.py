"""Clamps hold flat work.

What it looks at   work taller than 0.3 of its width under clamps
Why it matters     the lever works the clamps loose
What to do         screws, glue, a tenon
Does not apply     flat work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, fact

rule = Rule(
    when=fact("hold", method="clamped-faceplate", ratio=at_least(0.3)),
    effect=Effect.NOT_ADVISED,
    says="Too tall to clamp on a plate.",
)
