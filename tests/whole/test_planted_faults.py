"""Faults planted on purpose: an empty engine, a dropped rule, a wrong constant. Each must be seen."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from advisor.advice import advise
from advisor.engine import Engine, Fact, Ruling
from advisor.reading import read_case
from advisor.reckoning import bands, ends, speed_limits
from advisor.rulebook import load_book
from advisor.situation import lathe
from tests.rules.bench import advice, words_of
from tests.whole.answers import of


class EmptyEngine:
    """An engine that fires nothing."""

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        del facts
        return []


def test_an_engine_that_fires_nothing_gives_another_answer() -> None:
    case = read_case(None, words_of("BOWL; work.condition=[through-crack]"))
    assert advise(case).verdict == "do-not-mount"
    silent = advise(case, EmptyEngine())
    assert silent.verdict == "go"
    assert not silent.fired


@pytest.mark.parametrize(
    ("rule", "situation", "with_it", "without_it"),
    [
        ("cracked-through", "BOWL; work.condition=[through-crack]", "do-not-mount", "go"),
        ("treated-wood", "SPINDLE; work.state=round; work.condition=[treated]", "do-not-mount", "go"),
        ("reverse-unscrews", "BOWL; machine.nose=threaded; cut.rotation=reverse", "do-not-mount", "go-with-care"),
        ("no-window", "THIN; hold.method=spur-drive", "ask-first", "ask-first"),
    ],
)
def test_a_dropped_rule_shows(rule: str, situation: str, with_it: str, without_it: str) -> None:
    case = read_case(None, words_of(situation))
    whole, lame = advise(case), advise(case, Engine(load_book().without(rule)))
    assert whole.verdict == with_it
    assert lame.verdict == without_it
    assert {entry.rule.name for entry in whole.fired} - {entry.rule.name for entry in lame.fired} == {rule}


def test_a_wrong_band_shows(monkeypatch: pytest.MonkeyPatch) -> None:
    before = of("BOWL")["speed"]
    monkeypatch.setattr(bands, "SAWN_ROUND", frozenset())
    assert of("BOWL")["speed"]["ceiling_rpm"] < before["ceiling_rpm"]


def test_a_wrong_divisor_shows(monkeypatch: pytest.MonkeyPatch) -> None:
    before = of("NARROW")["thrust"]
    monkeypatch.setattr(ends, "SPLIT_DIVISOR", 2.0)
    assert of("NARROW")["thrust"]["allowed_n"] > before["allowed_n"] * 1.4


def test_a_wrong_rocking_factor_shows(monkeypatch: pytest.MonkeyPatch) -> None:
    before = of("BOWL; work.offset=8mm; machine.stand=ordinary")["speed"]["ceiling_rpm"]
    monkeypatch.setitem(lathe.AMPLIFICATION, "ordinary", 1.0)
    assert of("BOWL; work.offset=8mm; machine.stand=ordinary")["speed"]["ceiling_rpm"] > before * 1.05


def test_a_wrong_burst_divisor_shows(monkeypatch: pytest.MonkeyPatch) -> None:
    def burst() -> float:
        rows = of("BOWL")["speed"]["limits"]
        return float(next(row["rpm"] for row in rows if row["name"] == "burst"))

    before = burst()
    monkeypatch.setattr(speed_limits, "BURST_DIVISOR", 1.0)
    assert burst() == pytest.approx(before * 5**0.5)


def test_what_the_engine_gives_decides_the_order_of_holds() -> None:
    assert advice("BOWL").judgement.holds[0].method == "screw-chuck"
    case = read_case(None, words_of("BOWL"))
    assert advise(case, Engine(load_book().without("small-dry-blank"))).judgement.holds[0].method != "screw-chuck"
