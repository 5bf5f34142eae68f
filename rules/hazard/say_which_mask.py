"""Is there a mask?

What it looks at   a material that asks for a mask, with no word on it
Why it matters     with it this is ordinary work
What to do         say which
Does not apply     mask stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("need", token=one_of("P2", "P3"), respirator="unknown"),
    effect=Effect.WITH_CARE,
    says="{title} asks for a mask: class {mask} at least.",
    do="State person.respirator.",
    opens=("person.respirator",),
)
