"""A plastic nobody can name may be celluloid.

What it looks at   plastic nobody can name
Why it matters     its chips may flare from a spark
What to do         a bucket of water under the work
Does not apply     plastics with a name; celluloid, which is refused without water
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("need", token="water"),
    effect=Effect.CHECK,
    says="{title}: a bucket of water under the work, and the chips into it as they come.",
)
