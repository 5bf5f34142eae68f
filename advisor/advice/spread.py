"""How far each limit on the speed ranges over the stated scatter of what goes into it, by drawn jobs."""

from __future__ import annotations

import random
from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Mapping, Sequence
from statistics import NormalDist
from typing import Any

from advisor.advice.advise import Advice, advise, default_engine
from advisor.advice.whole import answer_for
from advisor.models.case import Case
from advisor.reckoning import scatter
from advisor.reckoning.speed import speed

SAMPLES = 300
SEED = 1
PERCENT = (5, 50, 95)
LEAST_SHARE = 0.05  # what matters less than this is not told
CHANCE = 2.0  # over the root of the draws: a rank correlation below this is chance
STEADY = 1e-6  # a limit that moves less than this does not scatter
CEILING = "ceiling"
NOT_DRAWN = "jaws-at-speed"  # its two factors of VDI 3106 stand for the scatter of the grip

Tell = Callable[[int], None]


def draws(names: Sequence[str], samples: int, seed: int) -> Iterable[dict[str, float]]:
    """Standard normal numbers for every name, each stratum of each drawn once: few draws, little noise."""
    dice = random.Random(seed)
    steps = [NormalDist().inv_cdf((place + 0.5) / samples) for place in range(samples)]
    columns = {name: dice.sample(steps, samples) for name in names}
    return ({name: columns[name][place] for name in names} for place in range(samples))


def one_draw(advice: Advice, z: Mapping[str, float]) -> dict[str, float]:
    """Every limit of one drawn job in rpm, and the smallest of them as the ceiling.

    The hold is drawn without its divisor, which stands for its scatter; every other limit keeps its own. The thrust in
    the bar is what the answer says to set: nobody sets another because the wood is another.
    """
    situation, used = scatter.drawn(advice.situation, z), advice.used
    held = any(limit.name == "hold" for limit in advice.speed.limits)  # else the hold's own verdict speaks
    hold = scatter.lets_go(situation, used.method, z) if held else None
    rate = speed(situation, used.method, used.figures.tail_up, hold, advice.thrust)
    found = {limit.name: limit.value for limit in rate.limits}
    found |= {limit.name: limit.value for limit in advice.speed.limits if limit.name == NOT_DRAWN}
    return {CEILING: min(found.values()), **found}


def quantile(values: Sequence[float], percent: float) -> float:
    """The value that `percent` of 100 lie below, straight lines between the middles of the strata."""
    ordered = sorted(values)
    place = max(percent / 100 * len(ordered) - 0.5, 0.0)
    below = int(place)
    above = min(below + 1, len(ordered) - 1)
    return ordered[below] + (place - below) * (ordered[above] - ordered[below])


def _ranks(values: Sequence[float]) -> list[float]:
    """Rank of each value, equal ones at the mean of theirs, from -1 to 1 about the middle."""
    ordered = sorted(values)
    return [
        (bisect_left(ordered, value) + bisect_right(ordered, value) - 1) / (len(values) - 1) - 1 for value in values
    ]


def correlation(first: Sequence[float], second: Sequence[float]) -> float:
    """Rank correlation of two columns, 0 where one of them stands still."""
    a, b = _ranks(first), _ranks(second)
    size = sum(x * x for x in a) * sum(y * y for y in b)
    return sum(x * y for x, y in zip(a, b, strict=True)) / size**0.5 if size else 0.0


def _matters(columns: Mapping[str, Sequence[float]], values: Sequence[float]) -> list[dict[str, Any]]:
    """The inputs that move the values, most first, each with its part of the squared rank correlations."""
    least = CHANCE / len(values) ** 0.5
    every = {name: correlation(column, values) for name, column in columns.items()}
    found = {name: rho for name, rho in every.items() if abs(rho) > least}
    whole = sum(rho * rho for rho in found.values())
    rows = [{"name": name, "share": rho * rho / whole, "rank_correlation": rho} for name, rho in found.items()]
    rows.sort(key=lambda row: -float(str(row["share"])))
    return [row for row in rows if float(str(row["share"])) >= LEAST_SHARE]


def _row(name: str, answer: float, values: Sequence[float], columns: Mapping[str, Sequence[float]]) -> dict[str, Any]:
    low, typical, high = (quantile(values, percent) for percent in PERCENT)
    steady = high - low <= STEADY * high
    return {
        "name": name,
        "answer_rpm": answer,
        "p5_rpm": low,
        "p50_rpm": typical,
        "p95_rpm": high,
        "inputs": [] if steady else _matters(columns, values),
    }


def spread_of(advice: Advice, samples: int, seed: int, tell: Tell) -> dict[str, Any]:
    """The range of each limit of the answer over drawn jobs; `tell` hears how many are done."""
    found = scatter.inputs(advice.situation, advice.used.method)
    columns: dict[str, list[float]] = {entry.name: [] for entry in found}
    answers = {CEILING: advice.speed.ceiling.value} | {limit.name: limit.value for limit in advice.speed.limits}
    rows: list[dict[str, float]] = []
    for z in draws(list(columns), samples, seed):
        for name, value in z.items():
            columns[name].append(value)
        rows.append(one_draw(advice, z))
        tell(len(rows))
    limits = [
        _row(name, answer, [row[name] for row in rows if name in row], columns)
        for name, answer in answers.items()
        if name != NOT_DRAWN and all(name in row for row in rows)
    ]
    return {
        "seed": seed,
        "samples": samples,
        "inputs": [
            {"name": entry.name, **entry.ends._asdict(), "unit": entry.unit, "basis": entry.basis} for entry in found
        ],
        "limits": limits,
        "not_drawn": [name for name in answers if all(name != row["name"] for row in limits)],
    }


def answer_with_spread(case: Case, parts: Iterable[str], samples: int, seed: int, tell: Tell) -> dict[str, Any]:
    """The answer, and in its speed the spread; without one where the piece is not to be mounted."""
    engine = default_engine()
    answer = answer_for(case, parts, engine)
    if answer["verdict"] != "do-not-mount":
        answer["speed"]["spread"] = spread_of(advise(case, engine), samples, seed, tell)
    return answer
