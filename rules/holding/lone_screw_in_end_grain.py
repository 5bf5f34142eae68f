"""One screw in end grain strips like a corkscrew.

What it looks at   a screw chuck in end grain over 75 mm
Why it matters     threads in end grain shear out in chips
What to do         screws on a plate, long ones, or a tenon
Does not apply     knobs up to 75 mm; side grain
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="screw-chuck", grain="along", diameter_mm=above(75.0)),
    effect=Effect.REFUSE,
    says="One screw in end grain over 75 mm pulls out like a corkscrew.",
    hard=True,
)
