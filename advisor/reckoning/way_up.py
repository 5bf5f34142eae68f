"""From the first switch-on to the finished piece: the ceiling as the work gets round."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace

from advisor.physics import balance
from advisor.reckoning.speed import INTERRUPTED_BAND, MM_PER_INCH, NOT_TRUE_BAND, Speed, machine_steps
from advisor.situation import Situation
from advisor.situation.shape import Body, base_share

LADDER_ROWS = 4
COUNTERWEIGHT_SHARE = 0.4  # of the diameter: inside the rim, clear of the tool


@dataclass(frozen=True)
class Rung:
    """One stage of truing: radius taken off and offset left in mm, ceiling in rpm and what sets it."""

    removed: float
    offset: float
    diameter: float
    ceiling: float
    governed_by: str
    state: str


@dataclass(frozen=True)
class Balance:
    """Mass kg, offset mm, how far to move the centers mm, counterweight g at `radius` mm, couple kg·mm²."""

    mass: float
    offset: float
    shift: float
    counterweight: float
    radius: float
    couple: float | None


def balance_of(situation: Situation) -> Balance:
    """Where the mass is and what would balance it."""
    body = situation.body
    radius = COUNTERWEIGHT_SHARE * body.diameter
    grams = balance.counterweight(mass=body.mass, offset=body.offset, radius=radius)
    return Balance(body.mass, body.offset, body.offset, grams, radius, body.couple)


def _to_round(situation: Situation) -> float:
    """Radius in mm that has to come off before the piece runs true."""
    body, form = situation.body, situation.traits.form
    half = body.diameter / 2
    flat = {"square": 1 - 1 / math.sqrt(2), "octagon": 1 - math.cos(math.pi / 8)}.get(form, 0.0)
    return min(max(flat * half, 2 * body.offset), half / 2)


def _trimmed(situation: Situation, removed: float, share: float, state: str) -> Situation:
    body = situation.body
    size = body.diameter - 2 * removed
    left = base_share(situation.traits.form, "round", situation.traits.green) * size
    offset = max(body.offset * (1 - share), left if share == 1.0 else 0.0)
    trimmed: Body = replace(
        body,
        diameter=size,
        end_diameter=min(body.end_diameter, size),
        thinnest=min(body.thinnest, size),
        mass=body.mass * (size / body.diameter) ** 2,
        offset=min(offset, body.offset),
    )
    traits = replace(situation.traits, state=state, form=situation.traits.form if share < 1.0 else "round")
    return replace(situation, body=trimmed, traits=traits)


def ladder(situation: Situation, ceiling_of: Callable[[Situation], tuple[float, str]]) -> tuple[Rung, ...]:
    """Ceilings from now to finished; `ceiling_of` works out one stage through the whole model."""
    rungs = []
    now = ceiling_of(situation)
    body = situation.body
    rungs.append(Rung(0.0, body.offset, body.diameter, *now, situation.traits.state))
    if not situation.trued:
        whole = _to_round(situation)
        for row in range(1, LADDER_ROWS + 1):
            share = row / LADDER_ROWS
            stage = _trimmed(situation, whole * share, share, "round" if share == 1.0 else "not-round")
            rungs.append(
                Rung(whole * share, stage.body.offset, stage.body.diameter, *ceiling_of(stage), stage.traits.state)
            )
    if situation.traits.state != "finished":
        stage = _trimmed(situation, rungs[-1].removed, 1.0, "finished")
        rungs.append(Rung(rungs[-1].removed, stage.body.offset, stage.body.diameter, *ceiling_of(stage), "finished"))
    return tuple(rungs)


@dataclass(frozen=True)
class Step:
    """One speed of the way up: when, how fast, what to look for."""

    when: str
    rpm: float
    check: str


def _on_machine(situation: Situation, rpm: float, start: float) -> float:
    """The lathe's own step at or under `rpm`, never under the start."""
    below = [step for step in machine_steps(situation) if step <= rpm]
    return max(below[-1], start) if below else max(rpm, start)


def steps(situation: Situation, speed: Speed, tail_up: bool) -> tuple[Step, ...]:
    """The way up at today's state of the piece; no step passes the ceiling."""
    top = speed.ceiling.value
    tail = "tailstock up, " if tail_up else ""
    first = Step(
        "first switch-on",
        speed.start,
        f"{tail}turn it two full turns by hand, stand out of the plane of the work, count to thirty",
    )
    if situation.trued:
        last = "stop, tighten, look; raise it while it runs quiet"
        return (first, Step("running quiet", _on_machine(situation, top, speed.start), last))
    inches = situation.body.diameter / MM_PER_INCH
    middle = min(INTERRUPTED_BAND / inches, top)
    upper = min(NOT_TRUE_BAND / inches, top)
    found = [first]
    plan = [
        (middle, "no rocking to be felt", "stop after a minute, tighten the hold and the tailstock again"),
        (upper, "cutting wood all the way round", "if it shakes, go back 20 %; never sit on a shake or run through it"),
    ]
    for rpm, when, check in plan:
        fitted = _on_machine(situation, rpm, speed.start)
        if fitted > found[-1].rpm * 1.05:
            found.append(Step(when, fitted, check))
    return tuple(found)
