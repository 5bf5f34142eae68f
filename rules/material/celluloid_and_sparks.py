"""Celluloid and sparks never meet.

What it looks at   celluloid with nails, grit or steel in the piece
Why it matters     one spark lights the chips, and they burn faster than anybody moves
What to do         leave it
Does not apply     celluloid with no metal about it
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="sparks", hard="yes", sparks="yes"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} with metal or grit in the piece: one spark sets it off.",
    do="Leave it. Ask: {ask_whom}.",
    opens=("work.condition", "work.parts"),
    hard=True,
)
