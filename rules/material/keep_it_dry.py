"""Some stuff must be dry, and nobody said.

What it looks at   plant stuff and others that must be dry, with no word on moisture
Why it matters     it looks the same wet and dry
What to do         weigh it, leave it a day in the shop, weigh it again
Does not apply     moisture stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="wet", moisture="unknown"),
    effect=Effect.CHECK,
    says="{title} must be dry through: weigh it, leave it a day in the shop, weigh it again.",
)
