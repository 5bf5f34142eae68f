"""The wanted speed is past the ceiling.

What it looks at   the speed the person wants against the ceiling
Why it matters     the ceiling is the smallest of real limits
What to do         start low and do what lifts the governing limit
Does not apply     speeds under the ceiling
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("speed", wanted_share=above(1.0)),
    effect=Effect.WITH_CARE,
    says="Not {wanted}: {ceiling} at most, because {why}.",
)
