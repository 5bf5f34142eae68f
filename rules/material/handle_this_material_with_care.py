"""Materials other than wood have their own way of failing.

What it looks at   the record of the material
Why it matters     habits from wood do not carry over
What to do         the speeds, angles and dust control of its record
Does not apply     wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("material", verdict="go-with-care"),
    effect=Effect.WITH_CARE,
    says="{title} fails like this: {fails_by}. Leave it alone when: {never}.",
    do="{step}.",
)
