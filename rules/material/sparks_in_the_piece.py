"""What burns is not cut with metal in it.

What it looks at   a material that burns or gives off poison in a flame, with nails, grit or steel in the piece
Why it matters     the tool strikes sparks where the chips lie
What to do         take the metal out first
Does not apply     pieces with no metal in them; celluloid, which is refused for good
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="sparks", hard="no", sparks="yes"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} with metal or grit in the piece: the sparks fall into its chips.",
    do="Take the metal out and ask again.",
    opens=("work.condition", "work.parts"),
)
