"""Work above 20 kg asks for the machine's own numbers first.

What it looks at   work above 20 kg with swing, lowest speed or machine mass missing
Why it matters     a large blank walks, tips or strikes a machine that is too small
What to do         give those of machine.swing, machine.min_rpm and machine.mass that are missing
Does not apply     smaller work; machines that were described
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, below, fact

rule = Rule(
    when=fact("machine", mass_kg=above(20.0), told=below(3)),
    effect=Effect.ASK_FIRST,
    says="{mass} on a lathe of which nobody said the {untold}.",
    do="Give {untold_fields}: work like this walks, tips or strikes a lathe too small for it.",
    opens=("machine.swing", "machine.min_rpm", "machine.mass"),
)
