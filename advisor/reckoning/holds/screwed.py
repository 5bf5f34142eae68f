"""Wood screws through a plate, and the single screw of a screw chuck."""

from __future__ import annotations

import math
from functools import lru_cache

from advisor.data.tables import load
from advisor.data.wood_tables import LATERAL
from advisor.physics import screws
from advisor.reckoning.defects import defect_share
from advisor.reckoning.holds import sizes, strengths
from advisor.reckoning.holds.capacity import Capacity, Divisors, Job, Model
from advisor.situation import Situation

DIVISORS_SIDE = Divisors(3.0, 3.0)  # memory
DIVISORS_END = Divisors(3.0, 4.0)  # memory
LOW_SHARE = 0.59  # 1 - 1.645 × 0.25, the scatter of withdrawal; derived; the 0.25 from memory


@lru_cache(maxsize=1)
def _lateral_rows() -> dict[str, tuple[tuple[float, float, float], ...]]:
    found: dict[str, list[tuple[float, float, float]]] = {}
    for row in load(LATERAL):
        entry = (row.number("gravity_low"), row.number("wood_screw_MPa"), row.number("lag_screw_MPa"))
        found.setdefault(row.text("group"), []).append(entry)
    return {group: tuple(sorted(entries)) for group, entries in found.items()}


def lateral_constant(group: str, gravity: float, lag: bool = False) -> float:
    """K in MPa of K·D², the side load of one screw in side grain, by the class of density the wood falls in.

    Between two printed classes the lower one; below the lightest class K falls with the square of the gravity.
    Source: Wood Handbook FPL-GTR-282 (2021), Table 8-4.
    """
    rows = _lateral_rows()[group]
    lightest, *_ = rows
    reached = [row for row in rows if gravity >= row[0]]
    if not reached:
        return (lightest[2] if lag else lightest[1]) * (gravity / lightest[0]) ** 2
    return reached[-1][2] if lag else reached[-1][1]


def _share(situation: Situation) -> float:
    """What wet wood, end grain and defects leave of a screw's hold."""
    share = defect_share(situation)
    if not situation.side_grain:
        share *= screws.END_GRAIN_ADVISED
    return share * screws.GREEN if situation.traits.green else share


def _divisors(situation: Situation) -> Divisors:
    return DIVISORS_SIDE if situation.side_grain else DIVISORS_END


@lru_cache(maxsize=256)
def group_moment(withdrawal: float, count: int, circle: float, plate: float) -> float:
    """Tipping moment in N·m of screws evenly on a circle, at the worst turn of the plate; mm and N.

    The plate tips over its edge: M = W·Σx²/x_max. Source: derived.
    """
    moments = []
    for turn in (0.0, math.pi / count):
        places = [
            max(plate / 2 - circle / 2 * math.cos(turn + math.tau * index / count), 0.0) for index in range(count)
        ]
        moments.append(
            screws.screw_group_moment(withdrawal=withdrawal, positions=places) if max(places) > 0 else 0.0
        )
    return min(moments)


def faceplate(job: Job) -> Model:
    """A plate on wood screws.

        W = 108.25·G²·D·L;  T = n·K·D²·r;  M = W·Σx²/x_max;  P = n·W

    Halved in end grain and in wet wood; the low end 0.59 of the mean. Source: Wood Handbook chapter 8; shares memory.
    """
    situation = job.situation
    model = Model(_divisors(situation), "estimate")
    wood = situation.wood
    if wood is None:
        return model
    count, diameter, thread, circle, plate = sizes.faceplate(job, model)
    given = situation.case.hold.screws
    lag = given is not None and given.kind == "lag"
    share = _share(situation)
    gravity = wood.gravity.typical
    withdrawal = share * screws.screw_withdrawal(
        gravity=gravity, diameter=diameter, thread=thread, kind="lag" if lag else "wood", fiber="side"
    )
    side = share * screws.screw_lateral(lateral_constant(wood.group, gravity, lag), diameter)
    model.typical = Capacity(
        count * side * circle / 2 * 1e-3,
        group_moment(withdrawal, count, circle, plate),
        count * withdrawal,
    )
    model.low = Capacity(*(LOW_SHARE * part for part in model.typical))
    return model


def screw_chuck(job: Job) -> Model:
    """One screw that pulls the work against a flat face.

        W = 108.25·G²·D·L;  T = µ·W·(2/3)·R;  M = W·R;  P = W,  R the radius of the face

    Shares as for a plate. Source: Wood Handbook chapter 8; friction of the face derived.
    """
    situation = job.situation
    model = Model(_divisors(situation))
    wood = situation.wood
    if wood is None:
        return model
    diameter, thread, face = sizes.worm(job, model)
    pull = _share(situation) * screws.screw_withdrawal(
        gravity=wood.gravity.typical, diameter=diameter, thread=thread, kind="wood", fiber="side"
    )
    rub = strengths.friction(situation)
    ends = []
    for slide, force in ((rub.low, LOW_SHARE * pull), (rub.typical, pull)):
        torque = screws.screw_chuck_torque(slide, force, face / 2)
        ends.append(Capacity(torque, screws.screw_chuck_moment(force, face / 2), force))
    model.low, model.typical = ends
    return model
