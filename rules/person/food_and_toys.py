"""What touches food or a child's mouth is a question of its own.

What it looks at   food or toy as the use
Why it matters     a finish cures for weeks and some woods leach
What to do         well-known food woods, fully cured finish, local rules
Does not apply     other uses
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("person", use=one_of("food", "toy")),
    effect=Effect.CAUTION,
    says="For food or toys: no program can call a wood harmless. Ask the finish maker and the rules where you sell.",
)
