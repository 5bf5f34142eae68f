"""What does not go through the bore cannot be held through it.

What it looks at   work diameter against the spindle bore
Why it matters     there is no way in
What to do         hold the end and use a steady
Does not apply     thinner bars
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="through-spindle", bore_share=above(1.0)),
    effect=Effect.REFUSE,
    says="It does not go through the spindle bore.",
)
