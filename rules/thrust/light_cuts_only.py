"""Only light cuts fit under the limits.

What it looks at   the share of an ordinary cut that fits, half or more
Why it matters     the drive slips or the end splits when you lean on it
What to do         sharp tool, small bites; a larger drive or seated teeth allow more
Does not apply     cuts that fit whole
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, all_of, at_least, below, fact

rule = Rule(
    when=fact("thrust", force_given="no", light_share=all_of(at_least(0.5), below(1.0))),
    effect=Effect.WITH_CARE,
    says="Light cuts only, up to {light}: more would need more thrust than {governed_by} allows.",
    window="narrow",
    opens=("hold.tail.kind", "hold.drive"),
)
