"""A name that fits several materials may hide the dangerous one.

What it looks at   a name that fits more than one record outside wood
Why it matters     one of them may shatter, burn or poison; the most troublesome is taken
What to do         name the exact material, from its sheet or its seller
Does not apply     names that fit one record
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("name", match="several-materials"),
    effect=Effect.ASK_FIRST,
    says='"{material}" fits several materials that do not behave alike: {choices}. Say which it is.',
    do="Name the exact material. {questions}",
    opens=("work.material",),
)
