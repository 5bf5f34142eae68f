"""Rubber buttons take finishing cuts.

What it looks at   heavy work in button jaws, under a ring clamp or between cups
Why it matters     rubber gives
What to do         jaws or screws
Does not apply     finishing
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold",
        method=one_of("rubber-button-jaws", "ring-clamp-plate", "sphere-cups"),
        operation=one_of("roughing", "shaping", "hollowing"),
    ),
    effect=Effect.NOT_ADVISED,
    says="Only finishing cuts and sanding with this hold.",
)
