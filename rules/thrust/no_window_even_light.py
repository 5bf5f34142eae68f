"""Not even light cuts find a safe thrust.

What it looks at   the share of an ordinary cut that fits under the limits, less than half
Why it matters     half an ordinary cut is the least anybody takes without noticing
What to do         seat the teeth; a cup; grip one end; a steady
Does not apply     a drive that cannot turn its dead center at all; cuts that fit; a force the person stated
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("thrust", turns="yes", force_given="no", cut_over_least=below(1.0)),
    effect=Effect.ASK_FIRST,
    says=(
        "No safe thrust with these centers, not even for light cuts: {short}. Change the center, grip one end, "
        "or steady it."
    ),
    do="Change the center, grip one end, or steady it.",
    window="empty",
    opens=("hold.tail.kind", "hold.drive.seated_depth", "hold.method", "hold.steady"),
)
