"""What the rules of materials, hazards, conditions and the person say, without judging the holds: quick."""

from functools import lru_cache

from advisor import facts, verdicts
from advisor.advice import default_engine
from advisor.advice.advise import MOUNT_VERDICT
from advisor.engine import Ruling
from advisor.material_facts import facts_of_materials
from advisor.reading import read_case
from advisor.situation import settle
from tests.rules.bench import words_of


@lru_cache(maxsize=1024)
def rulings(text: str) -> tuple[Ruling, ...]:
    """The rulings on `BASE; field=value; ...` that come from what it is made of and from who breathes it."""
    situation = settle(read_case(None, words_of(text)))
    asserted = [facts.blank(situation), facts.person(situation), *facts_of_materials(situation)]
    return tuple(default_engine().run(asserted))


def verdict(text: str) -> str:
    """The verdict of those rulings alone."""
    given = (MOUNT_VERDICT[one.rule.effect] for one in rulings(text) if one.rule.effect in MOUNT_VERDICT)
    return verdicts.worst(verdicts.MOUNT, given)
