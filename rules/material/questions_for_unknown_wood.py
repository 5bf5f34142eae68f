"""Wood nobody can name can be asked a few questions.

What it looks at   the word unknown
Why it matters     paint, preservative and rot are found by looking
What to do         look and press before mounting; ask a wood turner or a timber yard with the piece in hand
Does not apply     woods with a name
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("name", match="unknown"),
    effect=Effect.NOTE,
    says="To know more of it: {questions}",
)
