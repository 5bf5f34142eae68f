"""Two spurs split a small end.

What it looks at   two spurs in end grain under 40 mm
Why it matters     a straight edge across the end opens it
What to do         four teeth or a ring
Does not apply     larger ends; side grain
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="two-spur-drive", grain="along", end_mm=below(40.0)),
    effect=Effect.NOT_ADVISED,
    says="Two spurs are a wedge: they split a small end.",
)
