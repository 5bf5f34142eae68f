"""A name that fits several woods gets the worst of them.

What it looks at   a wood name that fits more than one species
Why it matters     they differ two to one in strength and in what their dust does
What to do         name the species
Does not apply     names that fit one species
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("name", match="several"),
    effect=Effect.NOTE,
    says=(
        '"{material}" fits several woods ({choices}): the worst value of each is used. Name the one you have for '
        "a better answer."
    ),
    opens=("work.material",),
)
