"""A P2 mask lets the finest through.

What it looks at   a material that asks for P3 filters, with a P2 mask stated
Why it matters     the finest dust goes deepest
What to do         P3 filters or a powered hood
Does not apply     P3 and powered hoods; materials for which P2 will do
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("need", token="P3", respirator="P2"),
    effect=Effect.WITH_CARE,
    says="{title} asks for P3 filters; a P2 mask lets the finest dust through.",
    do="Fit P3 filters or a powered hood.",
    opens=("person.respirator",),
)
