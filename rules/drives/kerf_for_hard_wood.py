"""Hard wood wants a kerf and a center hole.

What it looks at   side hardness of the wood above 4 kN, teeth still to be seated
Why it matters     teeth that are hammered into hard end grain split it or bounce off center
What to do         saw a cross kerf for the teeth and drill the center hole before the mallet
Does not apply     soft wood; teeth seated already; rings and cups
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact, none_of, one_of

rule = Rule(
    when=fact(
        "drive", drive=one_of("four", "two"), grain=none_of("across"), seated="advised", hardness_n=above(4000.0)
    ),
    effect=Effect.CHECK,
    says=(
        "Hard wood: saw a kerf across the end for each pair of teeth and drill a hole for the point before "
        "seating the drive."
    ),
)
