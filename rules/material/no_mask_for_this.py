"""Fiber dust is not raised without a mask.

What it looks at   glass, carbon and unnamed laminate with the mask stated absent
Why it matters     fibers pass into the lung
What to do         a half mask with P3 filters, or a powered hood
Does not apply     the same with a mask
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="no-respirator", respirator="none"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} is not turned without a fitting mask.",
    do="Fit P3 filters or a powered hood, or {next_step}.",
    opens=("person.respirator",),
)
