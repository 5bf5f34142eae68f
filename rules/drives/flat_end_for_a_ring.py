"""A ring drives on the whole rim or on one tooth.

What it looks at   a toothed ring or a cup as the drive
Why it matters     on an end that is not square the ring bears on one side, slips and walks off center
What to do         saw or face the end square first
Does not apply     spurs, which find their own depth
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("drive", drive=one_of("ring", "cup")),
    effect=Effect.CHECK,
    says=("Cut the driven end flat and square first: a ring that bears on one side slips and walks."),
)
