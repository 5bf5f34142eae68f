"""Where the smaller drive would slip, leave a stub.

What it looks at   the largest drive that stays under the finished size near the end, tried in the model of
                   thrust
Why it matters     a drive that fits under a thin end does not carry the cut
What to do         leave a waste stub and part it off last
Does not apply     finished sizes over the drive; a smaller drive that carries
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("drive", small_carries="no"),
    effect=Effect.CHECK,
    says=(
        "Leave a stub of at least {least} across and {reach} long at the drive: a drive of {small}, under the"
        " finished size, would not carry this cut."
    ),
)
