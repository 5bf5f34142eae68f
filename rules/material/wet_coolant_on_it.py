"""Milk plastic and fiber swell in coolant.

What it looks at   casein and vulcanized fiber cut wet
Why it matters     they drink water and crack as they dry
What to do         dry, with air on the edge
Does not apply     the same cut dry; other plastics
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="wet", family="plastic", cooling="wet"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} drinks the coolant and cracks: cut it dry.",
    do="Cut it dry, with air.",
    opens=("cut.cooling",),
)
