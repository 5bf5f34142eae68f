"""A long bar behind the spindle whips and bends square.

What it looks at   what stands out of the rear of the spindle against its thickness
Why it matters     it has killed; the whirl comes long before the top speed
What to do         cut the bar, or carry the rear in a tube with a spider and a barrier
Does not apply     short stubs
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("machine", rear_ratio=above(10.0)),
    effect=Effect.DO_NOT_MOUNT,
    says=(
        "The bar stands out behind the spindle more than ten diameters without support: it bends square and "
        "sweeps the shop."
    ),
    do="Cut it shorter, or carry the rear end in a tube and a spider.",
    hard=True,
    opens=("hold.rear_overhang",),
)
