"""A pin needs depth.

What it looks at   a pin chuck in work less than 30 mm thick
Why it matters     the hole is 20 mm deep at least and must not come through
What to do         a screw with a spacer, a glue block or tape
Does not apply     work of 30 mm and more
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="pin-chuck", length_mm=below(30.0)),
    effect=Effect.REFUSE,
    says="Too thin for the hole of a pin.",
)
