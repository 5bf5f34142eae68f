"""Glue on a finished face leaves a film.

What it looks at   glue or tape on a face that stays
Why it matters     solvent and scraper mark the finish
What to do         a friction block, jam chuck or suction
Does not apply     faces that are cut away
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact(
        "hold", method=one_of("glue-block", "paper-joint", "waste-block-faceplate", "double-sided-tape"), marks="stay"
    ),
    effect=Effect.HOLD_WITH_CARE,
    says="It leaves a film to scrape off.",
)
