"""A screw chuck unscrews in reverse.

What it looks at   a screw chuck with reverse rotation
Why it matters     that is how it comes off
What to do         run forward
Does not apply     forward rotation
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="screw-chuck", rotation="reverse"),
    effect=Effect.REFUSE,
    says="In reverse the work unscrews itself.",
)
