"""The chosen hold could not be checked.

What it looks at   a chosen hold that lacks what only the person can say
Why it matters     no figure stands behind it
What to do         give what is missing, or take {best}
Does not apply     holds that were checked
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("choice", chosen="yes", verdict="could-not-check"),
    effect=Effect.ASK_FIRST,
    says="The hold you chose ({method}) could not be checked. {reason}",
    do="Give what is missing, or change the hold: {best}.",
    opens=("hold.method",),
)
