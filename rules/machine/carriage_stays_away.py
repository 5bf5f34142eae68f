"""Round work wider than the carriage allows needs the carriage out of reach.

What it looks at   round work wider than the swing over the carriage
Why it matters     a carriage left near it is a crash
What to do         lock it at the tail end and use a hand rest
Does not apply     work that clears the carriage
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, one_of

rule = Rule(
    when=fact("machine", carriage_share=above(1.0), state=one_of("round", "finished")),
    effect=Effect.WITH_CARE,
    says="It is wider than the swing over the carriage: lock the carriage at the far end before the switch.",
)
