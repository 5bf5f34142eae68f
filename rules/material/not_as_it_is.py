"""Some materials are not turned as they are.

What it looks at   materials that time or work elsewhere makes fit: resin not cured
Why it matters     what comes off them now harms, and they let go of the hold
What to do         wait or work as the record says, then give the case again
Does not apply     materials never turned at all; those that wait for a laboratory
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("material", verdict="do-not-mount", always="no", proof="no"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} is not turned as it is: {why}.",
    do="{step}. Ask: {ask_whom}.",
    opens=("work.material",),
)
