"""Holding through the spindle is for long bars.

What it looks at   short work through the spindle
Why it matters     the front hold does all of it anyway
What to do         a collet or jaws
Does not apply     long bars
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="through-spindle", ratio=below(3.0)),
    effect=Effect.NOT_ADVISED,
    says="Too short to need the spindle bore.",
)
