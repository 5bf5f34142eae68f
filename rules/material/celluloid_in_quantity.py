"""Celluloid only in small stock.

What it looks at   celluloid over 40 mm across
Why it matters     a large piece makes more chips than a bucket covers, and keeps heat in
What to do         leave it, or have a conservator advise
Does not apply     small stock, which is asked about; other plastics
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, above, fact

rule = Rule(
    when=fact("refusal", token="large", family="plastic", diameter_mm=above(40.0)),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} over 40 mm across: too much to keep under water and cool.",
    do="Leave it. Ask: {ask_whom}.",
    opens=("work.diameter",),
)
