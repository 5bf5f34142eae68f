"""A drive that slips at half the cut is not advised.

What it looks at   capacity of a ring, cup, mandrel or pad under half of the cut
Why it matters     it turns into a burnisher
What to do         a spur drive with seated teeth
Does not apply     drives that hold positively
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(
    when=fact("hold", model="yes", slips="yes", divided=below(0.5)),
    effect=Effect.NOT_ADVISED,
    says="It slips before half of this cut.",
)
