"""Palm is hard outside and soft within.

What it looks at   palm and other woody stuff with a soft core
Why it matters     jaws and screws pull out of the soft part
What to do         press a thumbnail into both ends; grip the end that resists
Does not apply     pieces stated sound; soft ones, which are asked about
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="soft-hold", soft="no", sound="no"),
    effect=Effect.CHECK,
    says="Press a thumbnail into both ends of the {thing} and grip the end that resists.",
)
