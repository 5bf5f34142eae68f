"""How far the limits range over drawn jobs: ranks, quantiles and shares by hand, and what is drawn at all."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from statistics import NormalDist
from typing import Any

import pytest

from advisor.advice import advise, default_engine, spread
from advisor.advice.advise import Advice
from advisor.advice.spread import answer_with_spread, correlation, draws, one_draw, quantile, spread_of
from advisor.advice.whole import answer_for
from advisor.figure import Spread
from advisor.reckoning import scatter
from advisor.reckoning.scatter import Scattered
from tests.advice.bench import advice_of, case_of, kept_advice, limit

BOWL = "BOWL; hold.kit=[faceplate-screws]"
STANDS = "BOWL; hold.kit=[screw-chuck]; hold.tail.kind=none"  # its hold has a limit of its own


def test_each_stratum_of_each_input_is_drawn_once_at_its_middle() -> None:
    found = list(draws(["a", "b"], 5, 3))
    middles = [NormalDist().inv_cdf(place / 10) for place in (1, 3, 5, 7, 9)]
    assert [set(z) for z in found] == [{"a", "b"}] * 5
    for name in ("a", "b"):
        assert sorted(z[name] for z in found) == pytest.approx(middles)
    many = list(draws(["a", "b"], 60, 3))
    assert [z["a"] for z in many] != [z["b"] for z in many]
    assert many == list(draws(["a", "b"], 60, 3)) != list(draws(["a", "b"], 60, 4))
    assert list(draws([], 2, 1)) == [{}, {}]


@pytest.mark.parametrize(
    ("percent", "value"),
    [(0, 10.0), (12.5, 10.0), (37.5, 20.0), (50, 25.0), (60, 29.0), (87.5, 40.0), (100, 40.0)],
)
def test_a_quantile_lies_on_straight_lines_between_the_middles_of_the_strata(percent: float, value: float) -> None:
    """Four values stand for 12.5, 37.5, 62.5 and 87.5 of 100 (plotting positions of Hazen, from memory)."""
    assert quantile([30.0, 10.0, 40.0, 20.0], percent) == pytest.approx(value)
    assert quantile([7.0], percent) == 7.0


@pytest.mark.parametrize(
    ("first", "second", "rho"),
    [
        ([1, 2, 3], [10, 200, 300], 1.0),  # ranks, not sizes
        ([1, 2, 3], [3, 2, 1], -1.0),
        ([1, 2, 3, 4], [2, 1, 4, 3], 0.6),
        ([1, 2, 3, 4, 5], [2, 1, 3, 5, 4], 0.8),
        ([1, 1, 2], [1, 2, 3], 3**0.5 / 2),  # equal ones share the mean of their ranks
        ([2, 1, 2, 3, 2], [1, 2, 3, 4, 5], 0.2**0.5),
        ([1, 2, 3], [5, 5, 5], 0.0),
    ],
)
def test_the_rank_correlation_is_that_of_spearman(first: list[float], second: list[float], rho: float) -> None:
    assert correlation(first, second) == pytest.approx(rho)
    assert correlation(second, first) == pytest.approx(rho)


def drawn_once(
    monkeypatch: pytest.MonkeyPatch, text: str, hold: float | None = 800.0
) -> tuple[dict[str, float], list[Any]]:
    """One drawn job whose speeds are written down by hand, and what the reckoning was asked."""
    base = kept_advice(text)
    drawn, z = base.situation._replace(moisture=30.0), {"density": 1.0}
    asked: list[Any] = []

    def draw(*given: object) -> Any:
        assert given == (base.situation, z)
        return drawn

    def lets_go(*given: object) -> float | None:
        assert given == (drawn, base.used.method, z)
        return hold

    def speed(*given: Any) -> Any:
        asked.extend(given)
        limits = (limit("walking", 700.0), limit("rim-speed", 900.0))
        return base.speed._replace(limits=limits if given[3] is None else (*limits, limit("hold", given[3])))

    monkeypatch.setattr(scatter, "drawn", draw)
    monkeypatch.setattr(scatter, "lets_go", lets_go)
    monkeypatch.setattr(spread, "speed", speed)
    found = one_draw(base, z)
    assert asked[0] is drawn
    assert (asked[1], asked[2], asked[4]) == (base.used.method, base.used.figures.tail_up, base.thrust)
    return found, asked


def test_a_drawn_job_is_reckoned_anew_and_its_smallest_limit_is_the_ceiling(monkeypatch: pytest.MonkeyPatch) -> None:
    found, asked = drawn_once(monkeypatch, STANDS, 600.0)
    assert asked[3] == 600.0
    assert found == {"ceiling": 600.0, "walking": 700.0, "rim-speed": 900.0, "hold": 600.0}


def test_a_hold_without_a_limit_of_its_own_is_not_drawn(monkeypatch: pytest.MonkeyPatch) -> None:
    assert "hold" not in {entry.name for entry in kept_advice(BOWL).speed.limits}
    found, asked = drawn_once(monkeypatch, BOWL)
    assert asked[3] is None
    assert found == {"ceiling": 700.0, "walking": 700.0, "rim-speed": 900.0}


def test_the_limit_of_the_jaws_stays_what_the_answer_says(monkeypatch: pytest.MonkeyPatch) -> None:
    text = "BOWL; hold.kit=[jaws-on-tenon]; hold.tail.kind=none; work.state=round"
    now = next(entry.value for entry in kept_advice(text).speed.limits if entry.name == "jaws-at-speed")
    found, _ = drawn_once(monkeypatch, text)
    assert found["jaws-at-speed"] == now
    assert found["ceiling"] == min(700.0, now)


INPUTS = (
    Scattered("density", Spread(600.0, 700.0, 800.0), "kg/m³", "scatter of wood"),
    Scattered("friction", Spread(0.2, 0.3, 0.4), "", "memory"),
)
Law = Callable[[Mapping[str, float]], dict[str, float]]


def ranged(
    monkeypatch: pytest.MonkeyPatch, law: Law, samples: int = 400, heard: list[int] | None = None
) -> dict[str, Any]:
    """The spread where a drawn job follows a plain law of its two inputs."""
    base = kept_advice(BOWL)
    rate = base.speed._replace(ceiling=limit("walking", 700.0), limits=(limit("walking", 700.0), limit("burst", 900.0)))
    advice = base._replace(speed=rate)

    def inputs(*asked: object) -> tuple[Scattered, ...]:
        assert asked == (base.situation, base.used.method)
        return INPUTS

    def draw(given: Advice, z: Mapping[str, float]) -> dict[str, float]:
        assert given is advice
        return law(z)

    monkeypatch.setattr(scatter, "inputs", inputs)
    monkeypatch.setattr(spread, "one_draw", draw)
    return spread_of(advice, samples, 1, (heard if heard is not None else []).append)


def walking(z: Mapping[str, float]) -> float:
    return 1000.0 + 100.0 * z["density"]


def test_each_limit_is_told_with_the_answer_its_range_and_what_moves_it(monkeypatch: pytest.MonkeyPatch) -> None:
    heard: list[int] = []
    found = ranged(monkeypatch, lambda z: {"ceiling": walking(z), "walking": walking(z), "burst": 2000.0}, heard=heard)
    assert heard == list(range(1, 401))
    assert (found["seed"], found["samples"], found["not_drawn"]) == (1, 400, [])
    assert found["inputs"] == [
        {
            "name": "density",
            "low": 600.0,
            "typical": 700.0,
            "high": 800.0,
            "unit": "kg/m³",
            "basis": "scatter of wood",
        },
        {"name": "friction", "low": 0.2, "typical": 0.3, "high": 0.4, "unit": "", "basis": "memory"},
    ]
    ceiling, walks, burst = found["limits"]
    assert walks == {
        "name": "walking",
        "answer_rpm": 700.0,
        "p5_rpm": pytest.approx(1000 - 164.5, abs=0.2),  # 5 of 100 lie below -1.645
        "p50_rpm": pytest.approx(1000.0),
        "p95_rpm": pytest.approx(1000 + 164.5, abs=0.2),
        "inputs": [{"name": "density", "share": 1.0, "rank_correlation": pytest.approx(1.0)}],
    }
    assert (ceiling["name"], ceiling["answer_rpm"], ceiling["inputs"]) == ("ceiling", 700.0, walks["inputs"])
    assert burst == {
        "name": "burst",
        "answer_rpm": 900.0,
        "p5_rpm": 2000.0,
        "p50_rpm": 2000.0,
        "p95_rpm": 2000.0,
        "inputs": [],  # nothing moves it
    }


def moved_by(monkeypatch: pytest.MonkeyPatch, friction: float, samples: int = 400) -> list[dict[str, Any]]:
    def law(z: Mapping[str, float]) -> dict[str, float]:
        return {"ceiling": 1000.0 + 100.0 * (z["density"] - friction * z["friction"])}

    found: list[dict[str, Any]] = ranged(monkeypatch, law, samples)["limits"][0]["inputs"]
    return found


def test_what_moves_a_limit_most_comes_first_and_less_than_a_twentieth_is_not_told(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Of a sum of two normal numbers the shares are as the squares of their weights."""
    first, second = moved_by(monkeypatch, 2.0)
    assert (first["name"], second["name"]) == ("friction", "density")
    assert first["rank_correlation"] < 0 < second["rank_correlation"]
    assert first["share"] + second["share"] == pytest.approx(1.0)
    assert first["share"] == pytest.approx(0.8, abs=0.05)
    assert [entry["name"] for entry in moved_by(monkeypatch, 0.4)] == ["density", "friction"]  # 14 of 100
    (alone,) = moved_by(monkeypatch, 0.2)  # 4 of 100: seen, and not told
    assert alone["share"] < 1.0


def test_a_correlation_that_chance_alone_makes_counts_for_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    """Twice over the root of the draws: with 16 draws nothing under a half."""
    (alone,) = moved_by(monkeypatch, 0.0, 16)
    assert moved_by(monkeypatch, 0.5) == moved_by(monkeypatch, 0.5)  # the seed that is printed repeats it
    assert alone == {"name": "density", "share": 1.0, "rank_correlation": pytest.approx(1.0)}


def test_what_moves_less_than_a_millionth_stands_still(monkeypatch: pytest.MonkeyPatch) -> None:
    for size, steady in ((1e-4, True), (1e-2, False)):
        found = ranged(monkeypatch, lambda z, size=size: {"ceiling": 1000.0 + size * z["density"]})  # type: ignore[misc]  # binds the loop's value
        assert (found["limits"][0]["inputs"] == []) is steady


def test_a_limit_that_only_some_jobs_have_is_not_ranged(monkeypatch: pytest.MonkeyPatch) -> None:
    def law(z: Mapping[str, float]) -> dict[str, float]:
        return {"ceiling": 500.0, "walking": 500.0} | ({"burst": 900.0} if z["density"] > 0 else {})

    found = ranged(monkeypatch, law, 20)
    assert [entry["name"] for entry in found["limits"]] == ["ceiling", "walking"]
    assert found["not_drawn"] == ["burst"]


def test_the_jaws_are_named_as_not_drawn() -> None:
    text = "BOWL; hold.kit=[jaws-on-tenon]; hold.tail.kind=none; work.state=round"
    found = spread_of(kept_advice(text), 12, 1, lambda _: None)
    assert found["not_drawn"] == ["jaws-at-speed"]
    assert {"ceiling", "walking", "rim-speed", "hold"} <= {entry["name"] for entry in found["limits"]}


def test_the_answer_carries_the_spread_in_its_speed_unless_it_is_not_to_be_mounted(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    told: dict[str, Any] = {"limits": []}

    def tell(_: int) -> None:
        """Heard by nobody."""

    def ranges(*asked: Any) -> dict[str, Any]:
        assert isinstance(asked[0], Advice)
        assert asked[0].situation.case == case_of(BOWL)
        assert asked[1:] == (40, 7, tell)
        return told

    monkeypatch.setattr(spread, "spread_of", ranges)
    answer = answer_with_spread(case_of(BOWL), ["speed"], 40, 7, tell)
    assert answer["speed"]["spread"] is told
    assert answer["speed"]["ceiling_rpm"] == advice_of(BOWL).speed.ceiling.value
    assert "holding" not in answer
    cracked = case_of(f"{BOWL}; work.condition=[through-crack]")
    refused = answer_with_spread(cracked, ["speed"], 40, 7, tell)
    assert refused["verdict"] == "do-not-mount"
    assert "spread" not in refused["speed"]


def test_answer_and_spread_come_from_the_same_rule_book(monkeypatch: pytest.MonkeyPatch) -> None:
    heard: list[object] = []

    def listening(place: int, function: Callable[..., Any]) -> Callable[..., Any]:
        def listen(*asked: Any) -> Any:
            heard.append(asked[place])
            return function(*asked)

        return listen

    monkeypatch.setattr(spread, "advise", listening(1, advise))
    monkeypatch.setattr(spread, "answer_for", listening(2, answer_for))
    monkeypatch.setattr(spread, "spread_of", lambda *_: {})
    answer_with_spread(case_of(BOWL), ["speed"], 4, 1, lambda _: None)
    assert heard == [default_engine()] * 2
