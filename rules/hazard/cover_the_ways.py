"""Grit on slideways is lapping paste.

What it looks at   stone, glass, fiber and other abrasive dust
Why it matters     it beds into the oil and wears the machine for good
What to do         cover the ways so that the cover cannot be snatched; vacuum, wipe, then oil
Does not apply     stuff that leaves no grit
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("need", token="covered-ways"),
    effect=Effect.CHECK,
    says=(
        "{title} makes grit: cover the slideways so that the cover cannot be snatched, then vacuum, wipe and oil."
        " No air jet."
    ),
)
