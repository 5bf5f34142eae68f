"""Long work levers a stud out.

What it looks at   overhang of work on a keyed stud against its diameter, tailstock away
Why it matters     a stud is thin against the lever of the work
What to do         bring the tailstock up, or a steady
Does not apply     work under the tailstock; work no longer than it is wide
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("hold", method="keyed-stud", tail="away", ratio=above(1.0)),
    effect=Effect.NOT_ADVISED,
    says="Longer than it is wide on a stud and nothing supports the other end.",
    opens=("machine.tailstock", "cut.operation"),
)
