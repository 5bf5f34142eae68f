"""Only light cuts fit under the limits.

What it looks at   the share of an ordinary cut that fits, half or more
Why it matters     the drive slips or the end splits when you lean on it
What to do         sharp tool, small bites; a larger drive or seated teeth allow more
Does not apply     cuts that fit whole
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_least, below, fact

rule = Rule(
    when=fact("thrust", force_given="no", cut_over_least=at_least(1.0), light_share=below(1.0)),
    effect=Effect.WITH_CARE,
    says="Light cuts only, up to {light}: {more}.",
    window="narrow",
    opens=("hold.tail.kind", "hold.drive"),
)
