"""On a threaded nose every screwed-on hold can unscrew in reverse.

What it looks at   a hold on a threaded nose with reverse rotation and no lock
Why it matters     friction turns it off
What to do         lock it or run forward
Does not apply     locked threads, other noses
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("hold", group=one_of("screwed", "jawed", "clamped"), nose="threaded", rotation="reverse", locked="no"),
    effect=Effect.REFUSE,
    says="It unscrews from the nose in reverse.",
)
