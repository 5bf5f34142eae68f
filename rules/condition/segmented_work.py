"""Segmented rings fail at the end-grain joints.

What it looks at   the form segmented
Why it matters     a segment that leaves takes its neighbors along
What to do         a waste block glued on; look at every joint before the switch
Does not apply     solid blanks
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", form="segmented"),
    effect=Effect.WITH_CARE,
    says="Segmented work: light sharp cuts, no expanding hold, a day of cure behind every ring.",
)
