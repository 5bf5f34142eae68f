"""Glass and carbon wear steel tools away.

What it looks at   a steel tool in a material whose tables know carbide alone
Why it matters     the edge goes in one pass, and then it rubs and heats
What to do         carbide or diamond
Does not apply     carbide tools; materials that steel cuts
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("tool", tool_material="steel", steel_cuts="no"),
    effect=Effect.CAUTION,
    says="No table gives steel a speed in {thing}: carbide or diamond.",
)
