"""A burl hides stones, bark and holes.

What it looks at   the condition burl
Why it matters     root burls grow round stones
What to do         search before mounting; long screws or a wide glued face
Does not apply     clear wood
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", burl="yes"),
    effect=Effect.CHECK,
    says="Search the burl with a magnet and a bright light: stones and bark pockets hide in it.",
)
