"""A crack that nobody measured may be any size.

What it looks at   the condition crack without how far it reaches over the face
Why it matters     the same word covers a hair and a half; every limit hangs on its length
What to do         follow it with a bright light and a feeler, mark both ends with a pencil, give crack.across and
                   crack.along
Does not apply     small end checks, which have a word of their own
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, absent, fact

rule = Rule(
    when=fact("blank", crack="yes", crack_across_share=absent),
    effect=Effect.ASK_FIRST,
    says="There is a crack and nobody has measured it.",
    do="Follow it with a bright light, mark its ends and give crack.across and crack.along.",
    opens=("work.crack.across", "work.crack.along"),
)
