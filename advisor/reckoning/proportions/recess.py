"""A recess for jaws that open: its diameter, its depth and the wood round it."""

from __future__ import annotations

from advisor.figure import NoAnswer
from advisor.physics.jaws import recess_force
from advisor.physics.proportions import recess_outside_diameter
from advisor.reckoning.holds import jawed, sizes, strengths
from advisor.reckoning.holds.capacity import Model
from advisor.reckoning.proportions.size import ENOUGH, Check, Proportions, Size, Trial, said, shop

LEAST_WALL_MM = 15.0  # common practice, no source
LEAST_DIAMETER_MM = 25.0  # smaller jaws do not open in it; memory
DEPTHS_MM = (sizes.RECESS_DEPTH_MM, 6.0, 8.0)  # common practice, no source
DEPTH_SHARE = 0.25  # of the work's length; common practice, no source
FIELD, DEPTH, WALL = "recess.diameter", "recess.depth", "recess.wall"


def _outside(trial: Trial, diameter: float) -> float:
    """Diameter of the wood that stands round it."""
    given = trial.situation.case.hold.recess
    if given is not None and given.wall is not None:
        return diameter + 2 * given.wall
    end = trial.situation.body.end_diameter
    return min(diameter + sizes.RECESS_FOOT_MM, end) if trial.situation.traits.state == "finished" else end


def _depths(deepest: float) -> list[float]:
    """Depths there is room for, the shallowest first; the shallowest even where the piece is too thin for it."""
    return [depth for depth in DEPTHS_MM if depth <= max(deepest, DEPTHS_MM[0])]


def _wall(trial: Trial, diameter: float, depth: float) -> float | None:
    """Wall at which the rim stands the key without a divisor, at the low end of its strength; None where none does."""
    tension = strengths.splitting(trial.situation)
    if tension is None:
        return None
    floor = trial.situation.case.work.floor or 0.0
    try:
        outside = recess_outside_diameter(
            grip=key_grip(trial),
            diameter=diameter,
            depth=depth + min(floor, jawed.FLOOR_DEPTHS * depth),
            tension_perpendicular=tension.low,
        )
    except NoAnswer:
        return None
    return max((outside - diameter) / 2, LEAST_WALL_MM)


def key_grip(trial: Trial) -> float:
    """Outward grip in N of the key at its low end, or the person's own."""
    return jawed.grip(trial.job, Model(jawed.DIVISORS)).low


def recess(trial: Trial) -> Proportions:
    """Diameter, depth and wall of a recess."""
    situation = trial.situation
    body, given = situation.body, situation.case.hold.recess
    end = body.end_diameter
    high = end - 2 * LEAST_WALL_MM
    if high < LEAST_DIAMETER_MM and (given is None or given.diameter is None):
        room = f"{said(LEAST_WALL_MM)} of wood on either side leave {said(max(high, 0))}"
        return Proportions(trial.method, (), False, None, "", notes=(f"no recess fits: {room}",))
    high = max(high, 1.0)
    deepest = min(DEPTHS_MM[-1], DEPTH_SHARE * body.length)
    depths = _depths(deepest)
    least = trial.least(FIELD, LEAST_DIAMETER_MM, high, {DEPTH: depths[-1]})
    own = given.diameter if given is not None else None
    own_depth = given.depth if given is not None else None
    advised = min(sizes.RECESS_SHARE * body.diameter, sizes.RECESS_LARGEST_MM, high)
    why = "what the trade makes it"
    if least is not None and advised < least:
        advised, why = shop(least, high), "the cut asks for it"
    diameter = own if own is not None else shop(advised, high)
    carries = trial.first_of(DEPTH, depths, {FIELD: diameter})
    depth = own_depth if own_depth is not None else carries or depths[0]
    wall = max((_outside(trial, diameter) - diameter) / 2, 0.0)
    made = trial.with_sizes({FIELD: diameter, DEPTH: depth})
    own_wall = given is not None and given.wall is not None
    most = max((end - diameter) / 2, 0.0)
    needs = made.least(WALL, LEAST_WALL_MM, most)
    parts = (
        Size(FIELD, diameter, "mm", own is not None, least, high, why),
        Size(DEPTH, depth, "mm", own_depth is not None, carries, max(deepest, depths[0]), "as much floor under it"),
        Size(WALL, wall, "mm", own_wall, needs, most, "opening jaws load it like a hoop"),
    )
    return _told(made, parts, high)


def _told(made: Trial, parts: tuple[Size, ...], high: float) -> Proportions:
    diameter, depth, wall = (part.value for part in parts)
    margin, least = made.margin(), parts[0].least
    tension = strengths.splitting(made.situation)
    notes = []
    if least is None and margin is not None:
        notes.append(f"none up to {said(high)} across and {said(DEPTHS_MM[-1])} deep carries this cut")
    if tension is None or margin is None:
        return Proportions(made.method, parts, None, None, "", notes=tuple(notes))
    outer = diameter + 2 * wall
    floor = made.situation.case.work.floor or 0.0
    deep = depth + min(floor, jawed.FLOOR_DEPTHS * depth)
    splits = (
        recess_force(
            diameter=diameter, depth=deep, outside_diameter=outer, tension_perpendicular=tension.typical
        )
        if outer > diameter
        else 0.0
    )
    checks = (Check("splitting", splits, key_grip(made), "N", "estimate"),)
    if splits < key_grip(made):
        stands = _wall(made, diameter, depth)
        told = "no wall stands one" if stands is None else f"{said(stands)} of wall would stand one"
        notes.append(f"a firm key splits it ({told})")
    enough = margin >= ENOUGH and wall >= LEAST_WALL_MM
    return Proportions(made.method, parts, enough, margin, "splits", checks, None, tuple(notes))
