"""Stone that may hold asbestos or silica is never cut dry.

What it looks at   soapstone and unnamed stone, stated to be cut dry or with air
Why it matters     dry dust of it scars lungs, and air spreads it through the shop
What to do         work it wet, with the machine covered against the slurry, or leave it
Does not apply     stone worked wet; stone that is refused anyway
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("refusal", token="dry", hard="yes", cooling=one_of("dry", "air")),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} is never cut dry: its dust may hold asbestos or silica.",
    do="Work it wet, or not at all. Ask: {ask_whom}.",
    opens=("cut.cooling",),
    hard=True,
)
