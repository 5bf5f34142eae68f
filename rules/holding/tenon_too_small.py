"""A tenon under a fifth of the bowl tears off.

What it looks at   tenon diameter against the diameter of side-grain work
Why it matters     short grain snaps under the lever
What to do         a third to two fifths of the diameter
Does not apply     end grain, where length rules
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", method="jaws-on-tenon", grain="across", size_share=below(0.2)),
    effect=Effect.NOT_ADVISED,
    says="The tenon is under a fifth of the diameter: it tears off in a catch.",
)
