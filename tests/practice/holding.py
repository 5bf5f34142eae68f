"""One hold judged on one situation, for the tables of practice."""

from functools import lru_cache

from advisor.advice.advise import default_engine
from advisor.advice.judge import JudgedHold, judge
from advisor.reading import read_case
from advisor.situation import settle
from tests.rules.bench import words_of

OK = ("suits", "with-care")
SUITS = ("suits",)
CARE = ("with-care",)
NO = ("not-advised", "refused")
REFUSED = ("refused",)


@lru_cache(maxsize=512)
def judged(text: str, method: str) -> JudgedHold:
    """The judgement on this method alone, in this situation of the bench."""
    return judge(settle(read_case(None, words_of(text))), default_engine(), (method,)).holds[0]


def grounds(hold: JudgedHold) -> set[str]:
    """The rules that spoke on it."""
    return {ruling.rule.name for ruling in hold.rulings}
