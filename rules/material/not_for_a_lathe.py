"""Some materials wait for a name or a laboratory.

What it looks at   materials that are not turned until somebody has said what is in them
Why it matters     what comes off them may harm for life
What to do         a laboratory, or a piece with a name
Does not apply     materials that can be turned; those never turned at all; those stated tested or untested
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("material", verdict="do-not-mount", proof="yes", tested="unknown"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title}: leave it alone when {never}.",
    do="{step}. Ask: {ask_whom}.",
    opens=("work.tested", "work.material"),
)
