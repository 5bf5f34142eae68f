"""What is never mounted stays unmounted, whatever else is said. The refusals are common practice, no source."""

from __future__ import annotations

import random

import pytest

from advisor.advice import advise
from advisor.reading import InputFault, read_case
from tests.conftest import SEED, scale
from tests.whole.situations import situation

REFUSED = {
    "treated by condition": ["work.condition=[treated]"],
    "treated by name": ["work.material=treated pine"],
    "preserved by name": ["work.material=pressure-treated wood"],
    "creosoted": ["work.material=railway sleeper"],
    "unknown metal": ["work.material=unknown metal"],
    "beryllium copper": ["work.material=beryllium copper"],
    "lead in it": ["work.parts=[sugar maple, lead]"],
    "ivory": ["work.material=elephant ivory"],
    "asbestos": ["work.material=asbestos"],
    "hard stone": ["work.material=granite"],
    "celluloid without water": ["work.material=celluloid", "machine.extinguisher=none", "cut.cooling=dry"],
    "celluloid and a nail": ["work.material=celluloid", "work.condition=[nails]"],
    "soapstone dry": ["work.material=soapstone", "cut.cooling=dry"],
    "unnamed stone untested": ["work.material=unknown stone", "work.tested=no"],
    "old molding untested": ["work.material=old black molding", "work.tested=no"],
    "magnesium and water": ["work.material=magnesium", "machine.extinguisher=water"],
    "magnesium and nothing": ["work.material=magnesium", "machine.extinguisher=none"],
    "cracked through": ["work.condition=[through-crack]"],
    "oleander": ["work.material=oleander"],
    "manchineel": ["work.material=manchineel"],
    "uncured": ["work.material=epoxy casting", "work.condition=[uncured]"],
    "unknown, cracked, large": ["work.material=unknown", "work.condition=[crack]", "work.diameter=200mm"],
    "threaded nose in reverse": ["machine.nose=threaded", "machine.nose_lock=no", "cut.rotation=reverse"],
}
SMALL_ENOUGH = ("work.radii", "work.radii_far_end")


def refused_situation(dice: random.Random) -> tuple[str, list[str]]:
    """A random situation with one refusal planted in it."""
    name = dice.choice(tuple(REFUSED))
    fields = {word.partition("=")[0]: word for word in situation(dice)}
    fields.update({word.partition("=")[0]: word for word in REFUSED[name]})
    return name, [word for key, word in fields.items() if key not in SMALL_ENOUGH]


def run(count: int, dice: random.Random) -> int:
    """Ask about `count` of them; how many could be read."""
    read = 0
    for _ in range(count):
        name, words = refused_situation(dice)
        try:
            case = read_case(None, words)
        except InputFault:
            continue
        read += 1
        found = advise(case)
        assert found.verdict == "do-not-mount", (name, words)
        hard = [ruling for ruling in found.rulings if ruling.rule.hard]
        assert hard or name == "uncured", (name, words)
    return read


def test_a_planted_refusal_is_never_answered_otherwise() -> None:
    assert run(40, random.Random(8)) >= 15


@pytest.mark.slow
@pytest.mark.cases
def test_a_thousand_planted_refusals() -> None:
    count = scale(1000)
    print(f"seed {SEED}")
    assert run(count, random.Random(SEED)) >= count / 3


@pytest.mark.parametrize("name", REFUSED)
def test_each_refusal_stands_on_an_ordinary_piece(name: str) -> None:
    ordinary = {
        "work.material": "work.material=sugar maple",
        "work.diameter": "work.diameter=45mm",
        "work.length": "work.length=150mm",
        "work.form": "work.form=round",
        "work.state": "work.state=round",
        "person.extraction": "person.extraction=yes",
        "person.respirator": "person.respirator=powered",
        "machine.mass": "machine.mass=500kg",
    }
    assert advise(read_case(None, list(ordinary.values()))).verdict in ("go", "go-with-care")
    ordinary.update({word.partition("=")[0]: word for word in REFUSED[name]})
    assert advise(read_case(None, list(ordinary.values()))).verdict == "do-not-mount"
