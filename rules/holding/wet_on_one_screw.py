"""Wet wood lets one screw go.

What it looks at   a screw chuck in green wood over 200 mm
Why it matters     wet threads hold half
What to do         a faceplate
Does not apply     dry or small work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="screw-chuck", wet="yes", diameter_mm=above(200.0)),
    effect=Effect.NOT_ADVISED,
    says="Wet and over 200 mm: one screw will not stay tight.",
)
