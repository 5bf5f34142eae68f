"""Four teeth stand off the pith and off every check.

What it looks at   a four-tooth drive in end grain
Why it matters     a tooth in a check or on the pith is a wedge with half its work done
What to do         turn the center until all four teeth stand in sound wood
Does not apply     side grain; rings, cups and other drives
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("drive", drive="four", grain=none_of("across")),
    effect=Effect.CHECK,
    says="Turn the drive so that no tooth stands in a check or on the pith line, then seat it.",
)
