"""A dust that is kept down with water: dry or wet?

What it looks at   stone, shell and others that are worked wet, with no word on cooling
Why it matters     the same cut is refused dry and allowed wet
What to do         say how it is cooled
Does not apply     cooling stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="dry", cooling="unknown"),
    effect=Effect.ASK_FIRST,
    says="{title} is worked wet: say how you will do it, with the machine covered against the slurry.",
    do="Work it wet and state cut.cooling.",
    opens=("cut.cooling",),
)
