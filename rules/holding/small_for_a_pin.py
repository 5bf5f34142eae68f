"""A pin takes the middle out of small work.

What it looks at   a pin chuck in work less than 75 mm across
Why it matters     the hole of 25 mm leaves too little wood round it: the pin wedges it open
What to do         a screw chuck, a tenon or a collet
Does not apply     work of 75 mm and more
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="pin-chuck", diameter_mm=below(75.0)),
    effect=Effect.REFUSE,
    says="Too small for the hole of a pin: what is left round it splits.",
)
