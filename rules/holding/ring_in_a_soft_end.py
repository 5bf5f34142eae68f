"""A toothed ring does not bite in punk.

What it looks at   a ring or cup on a checked, punky or rotten end
Why it matters     it needs a square sound end
What to do         cut back to sound wood; spurs seated across the check
Does not apply     sound ends
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", method=one_of("toothed-ring-drive", "cup-drive"), faulty="yes"),
    effect=Effect.NOT_ADVISED,
    says="The end is too poor for a ring: it drives on one side or not at all.",
)
