"""A name that no table knows is no basis for advice.

What it looks at   a material name that matches no wood and no other record
Why it matters     wood values would be a guess, and a wrong one may hurt
What to do         find out what it is: ask whoever sold it, read the sheet that came with it; then name it
Does not apply     the word unknown, which stands for wood nobody can name
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", match="none"),
    effect=Effect.ASK_FIRST,
    says=(
        '"{material}" is not in the tables yet: nothing is known of how it breaks, what its dust does, or '
        "whether it burns."
    ),
    do="Find out what it is and name it; if it is wood nobody can name, write unknown.",
    opens=("work.material",),
)
