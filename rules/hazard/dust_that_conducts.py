"""Carbon and graphite dust shorts the motor.

What it looks at   materials whose dust conducts
Why it matters     it creeps into the motor and the speed control
What to do         extraction at the tool, motor and controls closed and covered, vacuum after
Does not apply     dust that does not conduct
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("shop", conducts="yes"),
    effect=Effect.WITH_CARE,
    says="The dust of {thing} conducts: cover motor and controls, extraction at the tool, no air jet.",
)
