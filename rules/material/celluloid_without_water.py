"""Celluloid burns under its own oxygen.

What it looks at   celluloid with anything but water at hand
Why it matters     nothing but water cools it, and its chips flare from a spark
What to do         a bucket of water under the work and every chip in it
Does not apply     celluloid with water at hand
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of, one_of

rule = Rule(
    when=fact("refusal", token="no-water", extinguisher=one_of("powder", "class-D", "none"), cooling=none_of("wet")),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} without water at hand: powder does not put it out.",
    do="{step}. Ask: {ask_whom}.",
    opens=("machine.extinguisher",),
    hard=True,
)
