"""A shop full of dust and nothing to put a fire out.

What it looks at   extinguisher stated as none
Why it matters     dust, chips and rags burn in every shop sooner or later
What to do         water or powder by the door, not behind the lathe
Does not apply     an extinguisher stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("shop", extinguisher="none"),
    effect=Effect.CAUTION,
    says="No extinguisher within reach: hang one by the door, of the class for what you cut, before the first chip.",
)
