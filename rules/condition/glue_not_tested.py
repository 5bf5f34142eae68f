"""A glue joint nobody tested may be no joint.

What it looks at   the condition untested-glue
Why it matters     a starved joint looks like a good one
What to do         break a scrap glued the same day: wood must tear and not the glue
Does not apply     joints with a test behind them
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", untested_glue="yes"),
    effect=Effect.ASK_FIRST,
    says="The glue joint is untested: nobody has seen how it breaks, and it may let go at speed.",
    do="Break a scrap that was glued with it: wood should tear, not the glue line.",
    opens=("work.tested",),
)
