"""A toolpost cut shows every spring of the bar.

What it looks at   deflection under 50 N over a twentieth of a millimeter, toolpost
Why it matters     size and finish suffer before safety does
What to do         steady; spring passes
Does not apply     stiff work
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("slender", tool="carriage", deflection_mm=above(0.05)),
    effect=Effect.CHECK,
    says="It springs {deflection} under the tool: a steady, or finish in several light passes.",
)
