"""Fiber dust needs a mask: is there one?

What it looks at   glass, carbon and unnamed laminate with no word on a mask
Why it matters     with it they are worked, without it they are refused
What to do         say which mask
Does not apply     mask stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="no-respirator", respirator="unknown"),
    effect=Effect.ASK_FIRST,
    says="{title} needs a fitting mask: say which you wear.",
    do="State person.respirator.",
    opens=("person.respirator",),
)
