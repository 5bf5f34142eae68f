"""A drive under the finished size carries this cut too.

What it looks at   the largest drive that stays under the finished size near the end, tried in the model of
                   thrust
Why it matters     then nothing has to be left as waste
What to do         take the smaller one
Does not apply     finished sizes over the drive; cuts that need the large one
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("drive", small_carries="yes"),
    effect=Effect.NOTE,
    says="A drive of {small} stays under the finished size and still carries this cut.",
)
