"""A name that no table knows is no basis for advice.

What it looks at   a name of the piece or of a part of it that matches no wood and no other record
Why it matters     wood values would be a guess, and a wrong one may hurt
What to do         go through the questions: look, weigh, ask whoever sold it; never burn or sniff it
Does not apply     the word unknown, which stands for wood nobody can name
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("name", match="none"),
    effect=Effect.ASK_FIRST,
    says=(
        '"{material}" is not in the tables: nothing is known of how it breaks, what its dust does, or whether it '
        "burns.{nearest}"
    ),
    do="Find out what it is and name it. {questions} The whole path: advisor explain what-is-it.",
    opens=("work.material",),
)
