"""Fine dust and a bare face.

What it looks at   a material that asks for P3 filters, with the mask stated absent
Why it matters     extraction never catches all of it
What to do         a half mask with P3 filters
Does not apply     mask present; materials refused without one
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("need", token="P3", respirator="none"),
    effect=Effect.ASK_FIRST,
    says="{title} asks for a half mask with P3 filters, and there is none.",
    do="Fit a half mask with P3 filters.",
    opens=("person.respirator",),
)
