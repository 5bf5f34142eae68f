"""What must never come out, whatever goes in: random situations, sound and absurd."""

from __future__ import annotations

import math
import random
from collections import Counter
from typing import Any

import pytest

from advisor.advice.whole import answer_for
from advisor.cli import ANSWER_PARTS
from advisor.models.case import Case
from advisor.reading import InputFault, read_case
from advisor.situation.shape import swept_diameter
from tests.conftest import SEED, scale
from tests.whole.situations import situation

TOP_BAND = 9000.0
GOING = ("go", "go-with-care")


def forbidden(case: Case, found: dict[str, Any]) -> list[str]:
    """Which of the answers that must never be given this is."""
    wrong = []
    thrust, speed = found["thrust"], found["speed"]
    conditions = set(case.work.condition or ())
    if thrust["window"] == "empty" and ("set_n" in thrust or "handwheel_nm" in thrust):
        wrong.append("a thrust number for an empty window")
    if speed["ceiling_rpm"] > TOP_BAND / (swept_diameter(case) / 25.4) * (1 + 1e-9):
        wrong.append("a ceiling above 9000 inch·rpm")
    if speed.get("start_rpm", 0) > speed["ceiling_rpm"] * (1 + 1e-9):
        wrong.append("a start above the ceiling")
    if any(step["rpm"] > speed["ceiling_rpm"] * (1 + 1e-9) for step in speed.get("steps", ())):
        wrong.append("a step above the ceiling")
    if found["verdict"] != "do-not-mount" and conditions & {"through-crack", "treated"}:
        wrong.append("a go for a through crack or treated wood")
    cracked = conditions & {"crack", "through-crack"} or case.work.crack is not None
    if found["verdict"] in GOING and case.work.material == "unknown" and cracked and case.work.diameter > 152.4:
        wrong.append("a go for an unknown large cracked blank")
    if found["verdict"] == "do-not-mount" and speed["ceiling_rpm"] != 0:
        wrong.append("a speed for what must not be mounted")
    if not found["cautions"]:
        wrong.append("no cautions")
    if not found["reasons"] and found["verdict"] != "go":
        wrong.append("a verdict without a reason")
    return wrong + [f"not a number at {place}" for place in not_finite(found)]


def not_finite(value: Any, place: str = "") -> list[str]:
    """Where an answer holds NaN, an infinity or nothing at all."""
    if isinstance(value, dict):
        return [found for key, part in value.items() for found in not_finite(part, f"{place}.{key}")]
    if isinstance(value, (list, tuple)):
        return [found for part in value for found in not_finite(part, f"{place}[]")]
    bad = value is None or (isinstance(value, float) and not math.isfinite(value))
    return [place] if bad else []


def run(count: int, dice: random.Random) -> Counter[str]:
    """Answer `count` random situations; how they ended."""
    ends: Counter[str] = Counter()
    for number in range(count):
        words = situation(dice)
        try:
            case = read_case(None, words)
        except InputFault as fault:
            ends["clear error" if str(fault).strip() else "error without a word"] += 1
            continue
        found = answer_for(case, ANSWER_PARTS["advise"], changes=number % 20 == 0)
        assert not forbidden(case, found), (words, forbidden(case, found))
        ends["answer"] += 1
        ends["speed and hold"] += bool(found["speed"].get("start_rpm") and found["holding"])
    return ends


def shares(ends: Counter[str], count: int) -> None:
    """At least half get past the reader, at least a third get a speed and a hold."""
    print(f"{count} situations: {dict(ends)}")
    assert not ends["error without a word"]
    assert ends["answer"] >= count / 2
    assert ends["speed and hold"] >= count / 3


def test_a_hundred_situations() -> None:
    shares(run(100, random.Random(20)), 100)


@pytest.mark.slow
@pytest.mark.cases
def test_twenty_thousand_situations_and_flat_memory() -> None:
    import resource

    count = scale(20_000)
    dice = random.Random(SEED)
    print(f"seed {SEED}")
    first = run(count // 4, dice)
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    ends = first + run(count - count // 4, dice)
    grown = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before
    shares(ends, count)
    assert grown < 40_000, f"memory grew by {grown} kB"
