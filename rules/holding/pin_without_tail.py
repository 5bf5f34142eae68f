"""A pin chuck needs the tailstock.

What it looks at   a pin chuck without the tail
Why it matters     the pin wedges against turning, not against tipping
What to do         tailstock up
Does not apply     work under the tailstock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hold", method="pin-chuck", tail="away"),
    effect=Effect.NOT_ADVISED,
    says="A pin in a hole holds only with the tailstock up.",
)
