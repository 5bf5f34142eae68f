"""A small tenon without the tailstock is not advised.

What it looks at   tenon diameter between a fifth and a quarter, tailstock away
Why it matters     the lever is long against the neck
What to do         bring the tailstock up, or cut a larger tenon
Does not apply     larger tenons; work under the tailstock
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, all_of, at_least, below, fact

rule = Rule(
    when=fact(
        "hold", method="jaws-on-tenon", grain="across", tail="away", size_share=all_of(at_least(0.2), below(0.25))
    ),
    effect=Effect.NOT_ADVISED,
    says="The tenon is under a quarter of the diameter and nothing supports the other side.",
)
