"""A material with a dangerous look-alike: is there a paper?

What it looks at   a material with a dangerous look-alike, with no word on a test
Why it matters     nothing you can see tells them apart
What to do         a certificate, an alloy number, a data sheet; then state it
Does not apply     materials stated tested or untested
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="untested", tested="unknown"),
    effect=Effect.ASK_FIRST,
    says="{title}: is there a certificate, an alloy number or a data sheet? Leave it alone when: {never}.",
    do="{step}; then state work.tested. Ask: {ask_whom}.",
    opens=("work.tested",),
)
