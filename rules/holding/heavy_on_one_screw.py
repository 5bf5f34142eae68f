"""More than 8 kg on one screw is not advised.

What it looks at   mass on a screw chuck
Why it matters     the screw only pulls the face home; the face does the work
What to do         a faceplate with four screws or more
Does not apply     lighter work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="screw-chuck", mass_kg=above(8.0)),
    effect=Effect.NOT_ADVISED,
    says="Too heavy for one screw: screws on a plate.",
)
