"""How far the limits range: against closed forms, numpy and scipy, and never below what the answer takes."""

from __future__ import annotations

import json
import math
import random
import subprocess
import sys
from pathlib import Path
from typing import Any

import jsonschema
import numpy as np
import pexpect
import pytest
from scipy.stats import norm, spearmanr

from advisor.advice.advise import Advice, advise
from advisor.advice.spread import correlation, draws, quantile, spread_of
from advisor.figure import Spread
from advisor.reading import read_case
from advisor.reckoning import scatter
from advisor.report.schema import answer_schema
from advisor.report.spread import spread_lines
from tests.conftest import SEED
from tests.rules.bench import words_of

CASES = Path(__file__).parents[2] / "cases"
SAMPLES = 40
# The 5 % point of drawn numbers is itself drawn: of many it is known to 2 % of the speed, of few with one seed alone.
MANY = 1000
KNOWN = 1.02
# Each has a limit that no other has: whirl, hold by jaws, screws, bond, buttons and suction, walking on its floor.
HELD = [
    "BOWL",
    "SPINDLE",
    "NARROW",
    "PLATTER",
    "PEN",
    "BOWL; hold.method=faceplate-screws; cut.operation=hollowing",
    "BOWL; hold.method=glue-block; hold.glue.kind=epoxy; work.state=round; cut.operation=hollowing",
    "BOWL; hold.method=screw-chuck; hold.tail.kind=none",
    "BOWL; work.state=finished; hold.method=vacuum; hold.vacuum.gauge=70kPa; hold.tail.kind=none",
    "BOWL; work.state=finished; hold.method=rubber-button-jaws; hold.tail.kind=none",
    "BOWL; work.moisture=green; work.one_side_wet=yes; machine.stand=light",
    "BOWL; machine.bolted_down=yes; machine.mass=400kg",
    "PEN; work.material=acrylic",
]


def nobody(_: int) -> None:
    """Hears how many are done and says nothing."""


def advice_of(text: str) -> Advice:
    return advise(read_case(None, words_of(text)))


def spread(text: str, samples: int = SAMPLES, seed: int = 1) -> dict[str, Any]:
    return spread_of(advice_of(text), samples, seed, nobody)


def row(found: dict[str, Any], name: str) -> dict[str, Any]:
    return next(entry for entry in found["limits"] if entry["name"] == name)


@pytest.mark.parametrize("text", HELD[::3])
def test_the_answer_lies_at_or_below_the_five_percent_point(text: str) -> None:
    at_or_below(spread(text)["limits"])


@pytest.mark.slow
@pytest.mark.properties
@pytest.mark.parametrize("text", HELD)
def test_the_same_in_many_draws(text: str) -> None:
    at_or_below(spread(text, MANY, SEED)["limits"])


def at_or_below(limits: list[dict[str, Any]]) -> None:
    for entry in limits:
        assert entry["answer_rpm"] <= entry["p5_rpm"] * KNOWN, entry
        assert entry["p5_rpm"] <= entry["p50_rpm"] <= entry["p95_rpm"]
        assert math.isclose(sum(part["share"] for part in entry["inputs"]) or 1.0, 1.0, abs_tol=0.35)


FILES = sorted(path for kind in ("yaml", "toml", "json") for path in CASES.glob(f"*.{kind}"))


@pytest.mark.slow
@pytest.mark.properties
@pytest.mark.parametrize("path", FILES, ids=[path.name for path in FILES])
def test_the_same_for_the_cases_that_may_be_mounted(path: Path) -> None:
    advice = advise(read_case(str(path), []))
    at_or_below(spread_of(advice, MANY, SEED, nobody)["limits"] if advice.verdict != "do-not-mount" else [])


def test_walking_goes_with_the_root_of_an_assumed_offset() -> None:
    """n = c/√e while the lathe tips: the ends of the speed are those of the offset, turned about."""
    found = row(spread("BOWL; work.mass=6kg; machine.mass=200kg; work.state=not-round"), "walking")
    shares = scatter.OFFSET_SHARES
    assert found["p5_rpm"] == pytest.approx(found["answer_rpm"], rel=5e-3)
    assert found["p50_rpm"] == pytest.approx(found["answer_rpm"] / math.sqrt(shares.typical), rel=5e-3)
    assert found["p95_rpm"] == pytest.approx(found["answer_rpm"] / math.sqrt(shares.low), rel=0.03)
    assert found["inputs"][0]["name"] == "offset of the mass"
    assert found["inputs"][0]["share"] > 0.9


def test_bursting_goes_with_the_root_of_strength_over_density() -> None:
    """n = c·√(f/ρ), drawn here apart with numpy from the same stated ends."""
    advice = advice_of("BOWL; work.diameter=90mm; work.length=40mm")  # small: no size effect, no floor
    found = row(spread_of(advice, 300, 1, nobody), "burst")
    wood = advice.situation.wood
    assert wood is not None
    dice = np.random.default_rng(7)

    def drawn(ends: Spread) -> Any:
        z = dice.standard_normal(200_000) / norm.ppf(0.95)
        side = np.where(z < 0, ends.typical - ends.low, ends.high - ends.typical)
        return np.maximum(ends.typical + z * side, 0.25 * ends.typical)

    ratio = np.sqrt(drawn(wood.tension_perpendicular) / drawn(wood.density))
    adverse = math.sqrt(wood.tension_perpendicular.low / wood.density.high)
    for percent in (5, 50, 95):
        expected = found["answer_rpm"] / adverse * float(np.quantile(ratio, percent / 100))
        assert found[f"p{percent}_rpm"] == pytest.approx(expected, rel=0.04)


def test_what_is_stated_does_not_scatter() -> None:
    found = spread("BOWL; work.mass=5kg; work.offset=8mm; machine.bolted_down=yes; machine.mass=300kg")
    names = {entry["name"] for entry in found["inputs"]}
    assert not names & {"offset of the mass", "friction of the floor"}
    assert row(found, "walking")["inputs"] == []
    assert row(found, "walking")["p95_rpm"] == pytest.approx(row(found, "walking")["answer_rpm"])


def test_the_stiffness_moves_the_whirl_of_a_thin_rod() -> None:
    assert row(spread("NARROW"), "whirl")["inputs"][0]["name"] == "stiffness"


def test_a_hold_scatters_by_its_own_parts() -> None:
    jaws = spread("BOWL; hold.method=jaws-on-tenon; work.state=round; cut.operation=hollowing")
    names = {entry["name"] for entry in jaws["inputs"]}
    assert {"grip of the hold", "friction in the hold"} <= names
    assert "jaws-at-speed" in jaws["not_drawn"]
    text = "\n".join(line.text for line in spread_lines(jaws))
    assert "without its divisor" in text
    assert "Not drawn: jaws-at-speed" in text
    screws = {entry["name"] for entry in spread("BOWL; hold.method=faceplate-screws")["inputs"]}
    assert "withdrawal of the screws" in screws
    assert "workmanship of the hold" in {
        entry["name"] for entry in spread("BOWL; hold.method=offset-faceplate")["inputs"]
    }


def test_a_limit_above_its_range_is_named() -> None:
    """Two ways to fail, each at its own low end, together lie a little below the lower of the two."""
    found = spread("BOWL")
    assert "takes no more than that. " in " ".join(line.text.strip() for line in spread_lines(found)) + " "
    row(found, "burst")["answer_rpm"] = 2 * row(found, "burst")["p5_rpm"]
    assert "but a little more for burst." in " ".join(line.text.strip() for line in spread_lines(found))


def test_a_hold_judged_by_practice_brings_no_scatter() -> None:
    advice = advice_of("SPINDLE; hold.method=square-socket-drive")
    assert scatter.lets_go(advice.situation, "square-socket-drive", {}) is None


def test_all_parts_at_their_low_ends_give_the_low_capacity() -> None:
    """So the hold lets go at the low end where its own low capacity stands no more, and not before."""
    advice = advice_of("BOWL; hold.method=jaws-on-tenon; work.state=round; cut.operation=hollowing")
    names = [entry.name for entry in scatter.inputs(advice.situation, "jaws-on-tenon")]
    low = advice.used.figures.low
    assert low is not None
    lowest = scatter.lets_go(advice.situation, "jaws-on-tenon", dict.fromkeys(names, -1.645))
    assert (lowest == 0.0) == (low < 1.0)
    typical = scatter.lets_go(advice.situation, "jaws-on-tenon", dict.fromkeys(names, 0.0))
    assert typical is not None
    assert typical > (lowest or 0.0)


@pytest.mark.parametrize("ends", [Spread(0.2, 0.35, 0.65), Spread(5.0, 5.0, 9.0), Spread(4.0, 10.0, 11.0)])
def test_a_drawn_value_reaches_its_stated_ends(ends: Spread) -> None:
    assert scatter.at(ends, -1.645) == pytest.approx(ends.low)
    assert scatter.at(ends, 0.0) == ends.typical
    assert scatter.at(ends, 1.645) == pytest.approx(ends.high)
    assert scatter.at(ends, -9.0) >= 0.25 * ends.typical or scatter.at(ends, -9.0) == ends.low


def test_quantile_and_correlation_against_numpy_and_scipy() -> None:
    dice = random.Random(5)
    first = [dice.gauss(0, 1) for _ in range(97)]
    second = [round(a + dice.gauss(0, 1), 1) for a in first]  # with ties
    assert correlation(first, second) == pytest.approx(spearmanr(first, second).statistic)
    assert correlation(first, [3.0] * 97) == 0.0
    for percent in (0, 5, 37, 50, 95, 100):
        assert quantile(first, percent) == pytest.approx(np.quantile(first, percent / 100, method="hazen"))


def test_draws_fill_every_stratum_once_and_repeat_with_their_seed() -> None:
    found = list(draws(["a", "b"], 50, 9))
    for name in ("a", "b"):
        strata = sorted(int(50 * norm.cdf(z[name])) for z in found)
        assert strata == list(range(50))
    assert found == list(draws(["a", "b"], 50, 9))
    assert found != list(draws(["a", "b"], 50, 10))


def test_another_seed_gives_nearly_the_same_range() -> None:
    first, second = row(spread("NARROW", 80, 1), "whirl"), row(spread("NARROW", 80, 2), "whirl")
    assert first["p5_rpm"] != second["p5_rpm"]
    assert first["p5_rpm"] == pytest.approx(second["p5_rpm"], rel=0.05)


def command(*words: str) -> subprocess.CompletedProcess[str]:
    line = [sys.executable, "-m", "advisor.cli", "speed", *words]
    return subprocess.run(line, capture_output=True, text=True, check=False)


def test_the_command_prints_the_seed_and_repeats_it() -> None:
    case = str(CASES / "wet-ash-faceplate.yaml")
    first = command(case, "--spread", "--seed", "42", "--json")
    assert (first.returncode, first.stderr) == (0, "")
    answer = json.loads(first.stdout)
    jsonschema.validate(answer, answer_schema())
    assert answer["speed"]["spread"]["seed"] == 42
    plain = command(case, "--spread")
    assert "300 draws, seed 1" in plain.stdout
    assert "offset of the mass" in plain.stdout


def test_no_spread_for_what_must_not_be_mounted() -> None:
    found = command(str(CASES / "cracked-log.yaml"), "--spread", "--json")
    assert "spread" not in json.loads(found.stdout)["speed"]


@pytest.mark.parametrize(
    ("words", "message"),
    [(["--seed", "4"], "--seed goes with --spread"), (["--spread", "--seed", "-1"], "whole number from 0")],
)
def test_a_seed_that_makes_no_sense_is_refused(words: list[str], message: str) -> None:
    found = command(str(CASES / "maple-spindle.yaml"), *words)
    assert found.returncode == 2
    assert message in found.stderr
    assert found.stdout == ""


def test_a_bar_moves_at_a_terminal_and_is_gone_afterward() -> None:
    child = pexpect.spawn(
        sys.executable,
        ["-m", "advisor.cli", "speed", str(CASES / "wet-ash-faceplate.yaml"), "--spread"],
        encoding="utf-8",
        dimensions=(60, 120),
        env={"TERM": "xterm", "PATH": "/usr/bin:/bin", "LANG": "C.UTF-8"},
        timeout=60,
    )
    child.expect("draws")
    child.expect("/300")
    child.expect("How far the limits range")
    child.expect(pexpect.EOF)
    child.close()
    assert child.exitstatus == 0
