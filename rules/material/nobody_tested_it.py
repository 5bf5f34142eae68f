"""What may be something worse is tested first.

What it looks at   a material with a dangerous look-alike, stated untested
Why it matters     soapstone may carry asbestos, bronze may be beryllium copper, acetate may be celluloid
What to do         a certificate, an alloy number, a data sheet
Does not apply     tested materials; the worst suspects, which are refused for good
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="untested", hard="no", tested="no"),
    effect=Effect.DO_NOT_MOUNT,
    says="{title}, untested: nothing says what is in it. Leave it alone when: {never}.",
    do="{step}. Ask: {ask_whom}.",
    opens=("work.tested",),
)
