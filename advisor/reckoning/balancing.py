"""Which way to move the centers, and what counterweight, where and how fixed."""

import math
from typing import NamedTuple

from advisor.physics import balance
from advisor.situation import Situation
from advisor.situation.assumption import Ledger
from advisor.situation.shape import AS_GIVEN, FROM_BALANCE, FROM_RADII, density_share, half_log_axis, radii_factor

COUNTERWEIGHT_SHARE = 0.4  # of the diameter: inside the rim, clear of the tool; common practice, no source
FIXING_DIVISOR = 5.0  # memory
LEAST_GRAMS = 0.001  # less than a shaving: nothing that anybody could bolt on; numerics
FEWEST_BOLTS = 2  # common practice, no source
BOLT_SHEAR_N = 4800.0  # M6, property class 4.6: 0.6 × 400 MPa × 20.1 mm² (ISO 898-1, quoted from memory)
MARKING_MM = 0.5  # how truly a new center is pricked by hand; memory


class Move(NamedTuple):
    """New center at one end ("near", "far" or "both"): how far in mm, toward what.

    `toward` names the measured radius it lies nearest to, `direction` is the angle in degrees from the first one, None
    where no radii were measured; `remains` the offset in mm left afterwards; `swing` the swept diameter in mm about the
    new center, None where it is not known.
    """

    end: str
    distance: float
    direction: float | None
    toward: str
    remains: float
    swing: float | None


class Counterweight(NamedTuple):
    """Weight in g at `radius` mm, opposite the heavy side; its pull in N at `rpm`, and what its fixing must hold.

    `rpm` is as fast as the piece may run with it, not only as fast as it may without.
    """

    grams: float
    radius: float
    direction: float | None
    rpm: float
    pull: float
    must_hold: float
    bolts: int
    couple_left: float


class Balance(NamedTuple):
    """Mass kg, offset mm, static part mm and couple kg·mm² of two ends; the moves and the weight to balance it."""

    mass: float
    offset: float
    static: float | None
    couple: float | None
    moves: tuple[Move, ...]
    weight: Counterweight | None


def _about(radii: tuple[float, ...], center: tuple[float, float]) -> float:
    """Swept diameter in mm of an outline about another center."""
    step = math.tau / len(radii)
    points = ((r * math.cos(place * step), r * math.sin(place * step)) for place, r in enumerate(radii))
    return 2 * max(math.hypot(x - center[0], y - center[1]) for x, y in points)


def _moves_by_radii(situation: Situation) -> tuple[Move, ...]:
    work, traits = situation.case.work, situation.traits
    uneven = density_share(traits.conditions, bool(work.one_side_wet)) * situation.body.diameter
    lists = [radii for radii in (work.radii, work.radii_far_end) if radii]
    names = ("near", "far") if len(lists) == 2 else ("both",)
    found = []
    for name, radii in zip(names, lists, strict=True):
        x, y = balance.center_from_radii(radii)
        distance = math.hypot(x, y)
        direction = math.degrees(math.atan2(y, x)) % 360
        remains = MARKING_MM + uneven + (radii_factor(radii, traits) - 1) * distance
        mark = round(direction / 360 * len(radii)) % len(radii) + 1
        on = f"{direction:.0f}° on from the first, the way they were measured"
        toward = f"toward radius {mark} of {len(radii)} ({on})"
        found.append(Move(name, distance, direction, toward, remains, _about(radii, (x, y))))
    return tuple(found)


def moves(situation: Situation) -> tuple[Move, ...]:
    """Where the centers belong: on the center of mass. None for a piece already round, whose axis is its shape's."""
    body, how = situation.body, situation.body.offset_from
    if situation.trued or body.offset <= 0:
        return ()
    if how == FROM_RADII:
        return _moves_by_radii(situation)
    if how == FROM_BALANCE:
        return (Move("both", body.offset, None, "away from the weight of the balance test", MARKING_MM, None),)
    if how == AS_GIVEN:
        side = "toward the side that falls to the bottom when the spindle turns free"
        return (Move("both", body.offset, None, side, MARKING_MM, None),)
    if situation.traits.form == "half-log" and not situation.side_grain:
        radius, height = half_log_axis(situation.case, body.diameter, Ledger())
        middle = 4 * radius / (3 * math.pi)
        side = "away from the sawn flat" if height < middle else "toward the sawn flat"
        swing = 2 * max(math.hypot(radius, middle), radius - middle)
        remains = MARKING_MM + density_share(situation.traits.conditions, False) * body.diameter
        return (Move("both", body.offset, None, side, remains, swing),)
    return ()


def counterweight(situation: Situation, move: Move | None, rpm: float) -> Counterweight | None:
    """The weight opposite the heavy side, and what its fixing must hold: five times m_c·r_c·ω² at `rpm`."""
    body = situation.body
    if body.offset <= 0:
        return None
    radius = COUNTERWEIGHT_SHARE * body.diameter
    grams = balance.counterweight(mass=body.mass, offset=body.offset, radius=radius)
    if grams < LEAST_GRAMS:
        return None
    pull = balance.unbalance_force(mass=grams / 1000, offset=radius, rpm=rpm)
    bolts = max(FEWEST_BOLTS, math.ceil(FIXING_DIVISOR * pull / BOLT_SHEAR_N))
    heavy = move.direction if move is not None else None
    return Counterweight(
        grams=grams,
        radius=radius,
        direction=None if heavy is None else (heavy + 180) % 360,
        rpm=rpm,
        pull=pull,
        must_hold=FIXING_DIVISOR * pull,
        bolts=bolts,
        couple_left=body.mass * body.offset * body.length / 2,
    )


def balance_of(situation: Situation, rpm: float) -> Balance:
    """Where the mass is and what would balance it, the counterweight held fast at `rpm`."""
    body = situation.body
    found = moves(situation)
    largest = max(found, key=lambda move: move.distance) if found else None
    return Balance(body.mass, body.offset, body.static, body.couple, found, counterweight(situation, largest, rpm))


def words_of(move: Move) -> str:
    """One move as a person reads it."""
    where = {"both": "at both ends", "near": "at the end of work.radii", "far": "at the far end"}[move.end]
    swing = f"; it then sweeps {math.ceil(move.swing):.0f} mm" if move.swing is not None else ""
    return f"{where} {move.distance:.1f} mm {move.toward}: about {move.remains:.1f} mm stays{swing}"
