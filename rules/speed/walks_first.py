"""Where the lathe walks first, the saw is cheaper than courage.

What it looks at   walking or tipping as the governing limit
Why it matters     force grows with the square of speed; speed falls only with the root of the offset
What to do         saw it rounder, move the centers, ballast or bolt the lathe
Does not apply     other governing limits
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("speed", governed_by="walking"),
    effect=Effect.NOTE,
    says=("The lathe itself is the limit: every millimeter sawn off the heavy side, or the centers moved, buys speed."),
)
