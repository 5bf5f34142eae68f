"""From the first switch-on to the finished piece: the ceiling as the work gets round."""

import math
from collections.abc import Callable
from typing import NamedTuple

from advisor.physics import rim
from advisor.reckoning.speed import INTERRUPTED_BAND, NOT_TRUE_BAND, Speed, machine_steps
from advisor.situation import Situation
from advisor.situation.shape import Body, base_share
from advisor.units import MM_PER_INCH

LADDER_ROWS = 4  # numerics
LEAST_RISE = 1.05  # a smaller step up is none; common practice, no source
STAND_ROCKS_RPM = (300.0, 900.0)  # memory


class Rung(NamedTuple):
    """One stage of truing: radius taken off and offset left in mm, ceiling in rpm and what sets it."""

    removed: float
    offset: float
    diameter: float
    ceiling: float
    governed_by: str
    state: str


def _to_round(situation: Situation) -> float:
    """Radius in mm that has to come off before the piece runs true."""
    body, form = situation.body, situation.traits.form
    half = body.diameter / 2
    flat = {"square": 1 - 1 / math.sqrt(2), "octagon": 1 - math.cos(math.pi / 8)}.get(form, 0.0)
    return min(max(flat * half, 2 * body.offset), half / 2)


def _trimmed(situation: Situation, removed: float, share: float, state: str) -> Situation:
    body = situation.body
    size = body.diameter - 2 * removed
    left = base_share(situation.traits.form, "round", situation.traits.green) * size  # what even a round piece keeps
    offset = max(body.offset * (1 - share), left)
    trimmed: Body = body._replace(
        diameter=size,
        end_diameter=min(body.end_diameter, size),
        thinnest=min(body.thinnest, size),
        mass=body.mass * (size / body.diameter) ** 2,
        offset=min(offset, body.offset),
    )
    traits = situation.traits._replace(state=state, form=situation.traits.form if share < 1.0 else "round")
    return situation._replace(body=trimmed, traits=traits)


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


class Step(NamedTuple):
    """One speed of the way up: when, how fast in rpm, what to look for, and the joules the piece then carries."""

    when: str
    rpm: float
    check: str
    energy: float


def _on_machine(situation: Situation, rpm: float, start: float) -> float:
    """The lathe's own step at or under `rpm`, never under the start."""
    below = [step for step in machine_steps(situation) if step <= rpm]
    return max(below[-1], start) if below else max(rpm, start)


def _step(situation: Situation, when: str, rpm: float, check: str) -> Step:
    body = situation.body
    return Step(when, rpm, check, rim.spinning_energy(mass=body.mass, diameter=body.diameter, rpm=rpm))


def _first(situation: Situation, rpm: float, tail_up: bool) -> Step:
    tail = "tailstock up; " if tail_up else ""
    check = (
        f"{tail}look at the dial or the belt; two full turns by hand; stand at the headstock or tail side, nobody in "
        "the plane of the work; count to thirty; listen for a tick, feel for rocking"
    )
    return _step(situation, "first switch-on", rpm, check)


def _last_of_uneven(situation: Situation, top: float) -> str:
    stand = ""
    if not situation.lathe.bolted and top > STAND_ROCKS_RPM[0]:
        stand = f" (stands rock by themselves at {STAND_ROCKS_RPM[0]:.0f} to {STAND_ROCKS_RPM[1]:.0f} rpm)"
    return f"the moment it shakes, go back 20 %{stand}; never stay on a shake and never run through it to a quiet place"


def steps(situation: Situation, speed: Speed, tail_up: bool) -> tuple[Step, ...]:
    """The way up at today's state of the piece; no step passes the ceiling."""
    top = speed.ceiling.value
    found = [_first(situation, speed.start, tail_up)]
    if situation.trued:
        last = (
            "stop after a minute, tighten the hold again, look for cracks and loose edges; raise it while it runs quiet"
        )
        plan = [(top, "running quiet, the most for this piece as it is", last)]
    else:
        inches = situation.body.diameter / MM_PER_INCH
        again = "stop after a minute, tighten the hold and the tailstock again"
        plan = [
            (min(INTERRUPTED_BAND / inches, top), "no rocking to be felt", again),
            (min(NOT_TRUE_BAND / inches, top), "cutting wood all the way round", _last_of_uneven(situation, top)),
        ]
    for rpm, when, check in plan:
        fitted = _on_machine(situation, rpm, speed.start)
        if fitted > found[-1].rpm * LEAST_RISE:
            found.append(_step(situation, when, fitted, check))
    return tuple(found)
