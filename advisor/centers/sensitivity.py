"""What an error of a thousandth in each direction does to the tooth, and the land that forgives such errors."""

from __future__ import annotations

from collections.abc import Callable
from math import ceil, radians
from typing import NamedTuple

from advisor.centers.wording import small_step
from advisor.physics.center import Setting, ToothedCenter, land, tip_angle, tip_drop
from advisor.physics.center_setting import razor_wall
from advisor.units import System

INDEX_ERROR = 0.05
"""Error of indexing that is reckoned with, degrees (common practice, no source)."""

INSIDE_THE_CORNER = 0.98
"""Share of the rim at which a tooth is read where its corner cannot be."""

Change = Callable[[ToothedCenter], ToothedCenter]


class Effect(NamedTuple):
    """One error made while everything else stays as set: what comes out at the place where the land is set."""

    what: str
    change_mm: float
    change_deg: float
    land_change: float
    tip_loss: float
    tip_angle: float | None
    tooth_height: float

    def as_dict(self) -> dict[str, object]:
        return {
            "what": self.what,
            "change_mm": self.change_mm,
            "change_deg": self.change_deg,
            "land_change_mm": self.land_change,
            "tip_loss_mm": self.tip_loss,
            "tip_angle_deg": self.tip_angle,
            "tooth_height_mm": self.tooth_height,
        }


def land_radius(center: ToothedCenter) -> float:
    """Radius at which the land is set: the rim for four and more teeth, the hole for two and three.

    A second setting passes the rim's very corner by nothing at all, so that any error nibbles it: the land is the same
    a little inside, and there it is read.
    """
    if center.teeth >= 5 and len(center.settings) == 2:
        return INSIDE_THE_CORNER * center.outer_radius
    return center.outer_radius if center.teeth >= 4 else center.hole_radius


def _moved(y: float = 0.0, z: float = 0.0, index: float = 0.0) -> Change:
    """The cutter stands elsewhere: the last setting walks in Y and is indexed wrong, all of them share the height."""

    def change(center: ToothedCenter) -> ToothedCenter:
        *first, last = center.settings
        moved = [s._replace(z=s.z + z) for s in first]
        wrong = Setting(last.y + y, last.z + z, last.turn + index)
        return center._replace(settings=(*moved, wrong))

    return change


def _deeper(by: float) -> Change:
    return lambda center: center._replace(depth=center.depth + by)


def _larger_cutter(by: float, touched_off: bool) -> Change:
    """A cutter off its nominal diameter. Touched off on the rim, Y carries half of the error along with it."""

    def change(center: ToothedCenter) -> ToothedCenter:
        shift = by / 2 if touched_off else 0.0
        settings = tuple(s._replace(y=s.y + shift) for s in center.settings)
        return center._replace(cutter=center.cutter + by, settings=settings)

    return change


def sensitivity(center: ToothedCenter, system: System) -> list[Effect]:
    """Every error of the smallest step, both ways, worked out on the shape itself and not on its slope.

    An error in the index of a single setting shows on the two teeth beside the wrong pocket: land R·δ more on one, less
    on the other.
    """
    step = small_step(system)
    deeper = [("cut deeper", step)] if center.depth + step <= center.cutter_radius else []
    changes: list[tuple[str, float, Change]] = [
        ("Y walked in further", step, _moved(y=-step)),
        ("Y stopped short", step, _moved(y=step)),
        ("cutter end lower", step, _moved(z=-step)),
        ("cutter end higher", step, _moved(z=step)),
        *[(what, by, _deeper(by)) for what, by in (*deeper, ("cut shallower", -step))],
        ("cutter larger, Y set from the axis", step, _larger_cutter(step, False)),
        ("cutter smaller, Y set from the axis", -step, _larger_cutter(-step, False)),
        ("cutter larger, Y touched off on the rim", step, _larger_cutter(step, True)),
    ]
    effects = [_effect(center, what, by, change(center)) for what, by, change in changes]
    return effects + _index_effects(center)


def _effect(center: ToothedCenter, what: str, by: float, wrong: ToothedCenter, turn: float = 0.0) -> Effect:
    radius = land_radius(center)
    loss = tip_drop(wrong, radius)
    change = land(wrong, radius) - land(center, radius)
    return Effect(what, abs(by), turn, change, loss, tip_angle(wrong, radius), wrong.depth - loss)


def _index_effects(center: ToothedCenter) -> list[Effect]:
    turns = ((f"indexed {INDEX_ERROR:g} deg too little", -1), (f"indexed {INDEX_ERROR:g} deg too far", 1))
    if len(center.settings) == 2:
        return [_effect(center, w, 0.0, _moved(index=s * INDEX_ERROR)(center), INDEX_ERROR) for w, s in turns]
    return [_effect(center, w, 0.0, _off_by_arc(center, s), INDEX_ERROR) for w, s in turns]


def _off_by_arc(center: ToothedCenter, sign: int) -> ToothedCenter:
    """One setting indexed wrong: the wall is shifted so that the land changes by the arc R·δ of the error."""
    radius, setting = land_radius(center), center.driving
    height, arc = setting.z, sign * radius * radians(INDEX_ERROR)
    width = land(center, radius)
    shift = razor_wall(radius, height, width - arc, center.teeth) - razor_wall(radius, height, width, center.teeth)
    return _moved(y=shift)(center)


def land_for_errors(center: ToothedCenter, system: System) -> float:
    """A small land that keeps every tip on the turned face, rounded up to the smallest step (mm).

    The errors of Y, height, depth, cutter and index, each of one smallest step (0.05 deg for the index), added up as if
    all went the bad way.
    """
    step = small_step(system)
    radius = land_radius(center)
    base = _moved(y=8 * step)(center)  # far enough from a razor edge for every error to show in the land
    wrong = (_moved(y=-step), _moved(z=-step), _deeper(-step), _larger_cutter(step, False))
    errors = sum(abs(land(change(base), radius) - land(base, radius)) for change in wrong)
    errors += radius * radians(INDEX_ERROR)
    return ceil(errors / step - 1e-9) * step
