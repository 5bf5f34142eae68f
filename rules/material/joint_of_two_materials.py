"""A tested joint still has two sides that move apart.

What it looks at   a piece of several materials with its joint tested
Why it matters     heat and damp pull at it from both sides
What to do         light cuts toward the joint closing, cool, tail up; the hold bears on both
Does not apply     one material; an untested joint
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("joint", tested="yes"),
    effect=Effect.WITH_CARE,
    says="A piece of {parts}: the joint moves with heat and damp. Light cuts, cool, a hold that bears on both.",
)
