"""An offset plate is out of balance by design.

What it looks at   an offset faceplate
Why it matters     it shakes and hides its edge
What to do         counterweight fixed five times over, low speed
Does not apply     centered work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="offset-faceplate"),
    effect=Effect.HOLD_WITH_CARE,
    says="Off-center work: counterweight it, mark the swept circle, 500 rpm at most.",
)
