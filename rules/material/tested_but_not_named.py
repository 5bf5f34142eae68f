"""What was tested has a name now.

What it looks at   a stone or molding called unknown although a test is stated
Why it matters     the test names it, and the name decides
What to do         give the name on the test report
Does not apply     materials given by name
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("material", verdict="do-not-mount", proof="yes", tested="yes"),
    effect=Effect.ASK_FIRST,
    says="{title}, and yet a test is stated: the report says what it is.",
    do="Give the name from the report.",
    opens=("work.material",),
)
