"""What to set, by feel.

What it looks at   a thrust that can be set, on a tailstock whose travel per turn nobody gave
Why it matters     two fingers give about 0.8 kN already, a heaved wheel 4 kN: people wind too hard
What to do         measure the quill's travel per turn, then the torque can be named
Does not apply     empty windows; tailstocks whose travel is known
Sources            work of a screw over one turn; efficiency from memory
"""

from advisor.rulebook import Effect, Rule, at_least, at_most, fact

rule = Rule(
    when=fact("thrust", cut_over_least=at_least(1.0), set_over_allowed=at_most(1.0), lead="no"),
    effect=Effect.CHECK,
    says=(
        "Set the tailstock to {set}, at most {allowed}: about {feel} at a wheel with 4 mm of travel a turn. Two "
        "fingers (2 N·m) give 800 N (180 lbf) there already, a heaved wheel 4 kN."
    ),
    basis=(
        "screw-theory",
        "memory",
    ),
)
