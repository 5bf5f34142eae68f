"""A drive too small for the end turns into a drill.

What it looks at   the stated outside diameter against the end of the work, below a quarter
Why it matters     small teeth carry little torque: they tear round and bore a hole
What to do         a drive of a quarter to a half of the end
Does not apply     sizes nobody stated; side grain; rings and cups
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact, none_of, one_of

rule = Rule(
    when=fact("drive", drive=one_of("four", "two"), grain=none_of("across"), sized="yes", drive_share=below(0.25)),
    effect=Effect.CAUTION,
    says=(
        "A drive of {outer} in an end of {end} turns into a drill when it slips: a quarter to a half of the "
        "end is usual."
    ),
)
