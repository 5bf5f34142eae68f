"""Eyes come first.

What it looks at   every job
Why it matters     most injuries happened with the shield off
What to do         impact-rated glasses first, a shield over them, kept clean
Does not apply     nothing: it always holds
Sources            ANSI Z87.1: a face shield is secondary, safety glasses come first; common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("person", operation=none_of("none")),
    effect=Effect.CAUTION,
    says="Safety glasses under a face shield, always: the shield stops chips, not the blank.",
    basis=("ansi-z87-1-2003", "common-practice"),
)
