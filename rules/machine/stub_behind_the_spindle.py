"""Even a short stub behind the spindle must be centered.

What it looks at   a rear overhang up to ten diameters
Why it matters     nobody looks there
What to do         plug or spider at the rear, a barrier round it
Does not apply     nothing standing out
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, at_most, fact

rule = Rule(
    when=fact("machine", rear_ratio=at_most(10.0)),
    effect=Effect.WITH_CARE,
    says="A stub stands out behind the spindle: center it, guard it, keep everybody away from it.",
)
