"""Look for crazing against a light.

What it looks at   brittle plastics with no word on their soundness
Why it matters     solvent and old stress leave fine cracks that open in the first catch
What to do         hold it against a light and turn it
Does not apply     pieces stated sound; crazed ones, which are refused
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("refusal", token="stress-crazed", crazed="no", sound="no"),
    effect=Effect.CHECK,
    says="Hold it against a light and look for fine cracks: crazed {thing} shatters.",
)
