"""Hardened plasterboard screws snap.

What it looks at   the kind of screw on a faceplate
Why it matters     hardened shanks break at the first blow
What to do         sheet-metal or structural screws, flat under the head
Does not apply     other screws
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("faceplate-screws", "waste-block-faceplate", "offset-faceplate"),
        screw_kind="plasterboard",
    ),
    effect=Effect.REFUSE,
    says="Plasterboard screws are brittle: they snap in shear without a sign.",
    opens=("hold.screws.kind",),
)
