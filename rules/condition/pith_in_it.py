"""Wood with the pith in it checks like a star.

What it looks at   the condition pith
Why it matters     a center set in the pith splits the piece
What to do         box out the pith if you can; a cup at the tail
Does not apply     wood cut clear of the pith
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("blank", pith="yes"),
    effect=Effect.WITH_CARE,
    says="The pith is in it: expect star checks, keep points off the pith and the speed down.",
)
