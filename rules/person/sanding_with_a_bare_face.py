"""Sanding makes the finest dust there is.

What it looks at   sanding dry wood with the mask stated absent
Why it matters     it hangs at nose height for the whole of the job
What to do         P3 while sanding, extraction behind the work
Does not apply     a mask worn; cutting; wet wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("person", operation="sanding", wet="no", respirator="none"),
    effect=Effect.WITH_CARE,
    says="Sanding without a mask: this is where most of the dust is breathed. P3 filters until the sweeping is done.",
    do="Wear P3 filters while sanding.",
    opens=("person.respirator",),
)
