"""Food and toys from what poisons or sensitizes.

What it looks at   food or toy as the use, with a material that is toxic or sensitizing
Why it matters     it is licked, chewed and washed warm for years
What to do         another material, or the maker's own papers for this use
Does not apply     other uses; materials without such a record
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("material", troubling="yes", use=one_of("food", "toy")),
    effect=Effect.ASK_FIRST,
    says="{title} for food or toys: it is on record as toxic or sensitizing. Choose another material.",
    do="Choose another material, or ask for the maker's papers for this use.",
    opens=("work.use", "work.material"),
)
