"""A hard stop unscrews a threaded nose.

What it looks at   a threaded nose, a brake, and no lock stated
Why it matters     the work keeps turning while the spindle stops
What to do         coast to a stop; fit the lock
Does not apply     noses that cannot unscrew
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("machine", nose="threaded", brake="yes", nose_lock=none_of("yes")),
    effect=Effect.WITH_CARE,
    says="A brake on a threaded nose: let it run down, or lock the chuck. A hard stop unscrews it.",
)
