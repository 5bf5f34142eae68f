"""Asthma and the dust of resin or board.

What it looks at   asthma with resin, castings and board whose record names no lung sensitizer
Why it matters     resin dust is fine, and part of it is never fully cured
What to do         ask the physician; keep it wet or leave it
Does not apply     people without asthma; solid plastics
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("material", family=one_of("resin", "hybrid", "board"), lung="no", asthma="yes"),
    effect=Effect.ASK_FIRST,
    says="{title} and asthma: its dust may set it off. Ask your physician first.",
    do="Ask your physician, or choose another material.",
    opens=("work.material",),
)
