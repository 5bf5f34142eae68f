"""A crotch pulls three ways.

What it looks at   the condition crotch
Why it matters     three stems pull apart at the middle as it dries
What to do         tail up as long as it goes; refuse an open pith line
Does not apply     straight stems
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", crotch="yes"),
    effect=Effect.CHECK,
    says="Crotch wood: set the hold across the feather and watch the pith line.",
)
