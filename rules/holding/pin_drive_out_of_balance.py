"""A pin drive does not take a lopsided piece.

What it looks at   a pin drive on work out of round
Why it matters     every turn levers on one pin
What to do         round it in another drive first
Does not apply     round work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="point-and-pin-drive", state="not-round"),
    effect=Effect.NOT_ADVISED,
    says="A single pin does not take work out of balance.",
)
