"""A large cracked lump of unknown wood is three doubts at once.

What it looks at   wood nobody can name, with a crack, from 6 in across
Why it matters     strength, moisture and the crack's end are all guesses
What to do         turn a small sound piece of it first, or leave it
Does not apply     small sound pieces of unknown wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, fact, one_of

rule = Rule(
    when=fact("name", match=one_of("unknown", "none"), crack="yes", diameter_mm=at_least(152.4)),
    effect=Effect.DO_NOT_MOUNT,
    says="Unknown, cracked and large: nobody can say what holds it together.",
    do="Cut a small sound piece from it and try that first.",
    hard=True,
)
