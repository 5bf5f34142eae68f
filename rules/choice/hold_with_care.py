"""The hold is good enough with care.

What it looks at   a hold in use that is accepted with care
Why it matters     its margin is there on an ordinary day and not on a bad one
What to do         tug it, take light cuts, tighten again after the first minute
Does not apply     holds that suit
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("choice", verdict="with-care"),
    effect=Effect.WITH_CARE,
    says="The hold ({method}) will do with care: tighten, tug by hand, light cuts, look again at every stop.",
)
