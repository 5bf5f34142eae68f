"""A jam fit takes finishing cuts.

What it looks at   heavy work in a jam fit, under suction or against a pad
Why it matters     friction is all that holds it
What to do         jaws or screws
Does not apply     light cuts
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold", method=one_of("jam-chuck", "vacuum", "friction-block"), operation=one_of("roughing", "hollowing")
    ),
    effect=Effect.NOT_ADVISED,
    says="Only finishing cuts with this hold.",
)
