"""A joint of two materials is the weakest thing in the piece.

What it looks at   a piece of several materials with no test of its joint stated
Why it matters     they stiffen, swell and cure apart, and the joint looks the same before it goes
What to do         break a scrap glued the same day; then say so
Does not apply     one material; a tested joint; wood cast in resin, which has a record of its own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("joint", tested=none_of("yes")),
    effect=Effect.ASK_FIRST,
    says="A piece of {parts}: has anybody broken a joint like it?",
    do="Break a scrap that was joined with it, then state work.tested.",
    opens=("work.tested",),
)
