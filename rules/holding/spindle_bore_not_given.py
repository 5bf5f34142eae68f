"""Nobody said how wide the spindle bore is.

What it looks at   a bar through the spindle without the bore of the spindle
Why it matters     most bars do not go through most spindles
What to do         measure the bore
Does not apply     spindles whose bore is given; other holds
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, absent, fact

rule = Rule(
    when=fact("hold", method="through-spindle", bore_share=absent),
    effect=Effect.COULD_NOT_CHECK,
    says="The bore of the spindle was not given: measure it.",
    opens=("machine.spindle_bore",),
)
