"""More than 5 kg on one screw asks for care.

What it looks at   mass between 5 and 8 kg on a screw chuck
Why it matters     the threads carry every blow
What to do         tailstock up; a faceplate is better
Does not apply     lighter work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, all_of, at_most, fact

rule = Rule(
    when=fact("hold", method="screw-chuck", mass_kg=all_of(above(5.0), at_most(8.0))),
    effect=Effect.HOLD_WITH_CARE,
    says="Heavy for one screw: tailstock up, low speed.",
)
