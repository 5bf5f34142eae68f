"""A thin blank has no room for screws.

What it looks at   thickness under a faceplate
Why it matters     the tool finds the points
What to do         a glued waste block
Does not apply     thicker blanks; what is no wood and takes clamps
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("faceplate-screws", "offset-faceplate"), family="wood", length_mm=below(25.0)),
    effect=Effect.REFUSE,
    says="Under 25 mm thick there is no wood for the screws and the tool both.",
)
