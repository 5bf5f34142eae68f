"""The hold that was chosen is not the one to use.

What it looks at   the verdict on the chosen hold, and whether another would do
Why it matters     the hold is the craft; a wrong one is not mended by speed
What to do         take the hold named, or change what the margins say
Does not apply     holds that are accepted
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "choice", chosen="yes", verdict=one_of("refused", "not-advised"), best_verdict=one_of("suits", "with-care")
    ),
    effect=Effect.ASK_FIRST,
    says="Not this hold ({method}). {reason}",
    do="Better here: {best}.",
    opens=("hold.method",),
)
