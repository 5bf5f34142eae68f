"""The pea family is wide.

What it looks at   a wood that shares with the one that hurt only a family of many thousand species
Why it matters     most of its members have nothing in common, and some do
What to do         watch skin and breath
Does not apply     closer kin, which count for more; woods with no relation
Sources            HSE Woodworking Information Sheet No 30, Toxic woods
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("hazard", reacted="distant"),
    effect=Effect.NOTE,
    says=(
        "{wood} belongs to the same wide family as a wood you have reacted to: watch skin and breath, stop at the"
        " first sign."
    ),
    basis=("hse-wis30",),
)
