"""A test opens what was asked about, with care.

What it looks at   a material that a test or papers settle, with the test stated
Why it matters     the paper settles what is in it and not how it breaks
What to do         the speeds, angles and dust control of its record
Does not apply     materials not tested; those that no paper settles
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("material", verdict="ask-first", proof="yes", tested="yes"),
    effect=Effect.WITH_CARE,
    says="{title}, with its test or papers: {fails_by}. Leave it alone when: {never}.",
    do="Keep the paper with the piece, and ask {ask_whom} if the lot is another one.",
)
