"""A square socket holds only squares.

What it looks at   a socket drive on stock that is not square
Why it matters     it turns in the socket
What to do         another drive
Does not apply     squares
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("hold", method="square-socket-drive", form=none_of("square")),
    effect=Effect.REFUSE,
    says="A square socket needs a square end.",
)
