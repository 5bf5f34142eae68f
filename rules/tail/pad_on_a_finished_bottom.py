"""A finished bottom wants a pad under the center.

What it looks at   a piece reversed to clear its foot, with a bare center at the tail
Why it matters     the point punches through a thin bottom or marks it
What to do         a pad of wood or leather between, thrust only as much as drives
Does not apply     pads
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("tail", reversed="yes", center=none_of("live-pad")),
    effect=Effect.CAUTION,
    says=("Put a pad under the tail center: a bare one marks the finished bottom and punches through a thin one."),
)
