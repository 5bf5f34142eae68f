"""Chips that burn are cleared as they come.

What it looks at   materials whose chips or dust catch fire
Why it matters     a heap lights from one spark and cannot be carried out
What to do         clear them every few minutes into a closed metal bin, with the right extinguisher at hand
Does not apply     materials that only smolder
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("shop", burns="yes"),
    effect=Effect.CAUTION,
    says="{title} burns ({fire}). Clear the chips every few minutes, never in a heap; at hand: {extinguisher}.",
)
