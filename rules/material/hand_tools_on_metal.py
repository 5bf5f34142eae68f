"""A wood tool grabs in metal.

What it looks at   metal cut with a tool held by hand
Why it matters     an edge with rake pulls itself in, in brass most of all
What to do         a graver with no rake on a steel rest set close; the toolpost for steel
Does not apply     metal cut from the toolpost; other materials
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("tool", tool="hand", family="metal"),
    effect=Effect.WITH_CARE,
    says=(
        "{title}, cut by hand: a graver with no rake on a close steel rest, never a wood gouge; steel from the "
        "toolpost only."
    ),
)
