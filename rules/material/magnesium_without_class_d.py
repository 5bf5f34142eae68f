"""Burning magnesium is fed by water and by most powders.

What it looks at   magnesium with a water or ordinary powder extinguisher, or none
Why it matters     water on it explodes; only class D powder, dry sand, dry iron chips or graphite smother it
What to do         class D powder or a box of dry sand within reach, chips cleared as they come
Does not apply     magnesium with class D at hand
Sources            T.O. 1-1A-9, machining of magnesium
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("refusal", token="no-class-D", hard="yes", extinguisher=one_of("water", "powder", "none")),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} without class D powder or dry sand at hand. Water on it explodes.",
    do="{step}, or get class D powder. Ask: {ask_whom}.",
    opens=("machine.extinguisher", "work.material"),
    basis=("to-1-1a-9-magnesium",),
    hard=True,
)
