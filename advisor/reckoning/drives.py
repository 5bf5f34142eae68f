"""The drive in the headstock: its size as given or as recommended, and what its teeth carry."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING, NamedTuple

from advisor.data.tables import Number, Table, Text, load
from advisor.physics.teeth import TOOTH_SHARE, WORKING_FACTOR, side_grain_bearing
from advisor.reckoning.defects import defect_share
from advisor.situation import Situation
from advisor.situation.assumption import Assumption

if TYPE_CHECKING:
    from advisor.models.case import Drive as GivenDrive

TOOTH_HALF_ANGLE_DEG = 30.0  # common practice, no source
CHISEL_INCLUDED_DEG = 35.0  # teeth up to this included angle are chisels; memory
LEAST_SEAT_MM = 2.0  # common practice, no source
MOST_SEAT_MM = 6.0  # common practice, no source
MOST_SEAT_TWO_SIDE_MM = 10.0  # two large spurs in side grain; common practice, no source
SEAT_SHARE_OF_TOOTH = 0.8  # memory
SEAT_SHARE_OF_END = 1 / 5  # memory
SEAT_SHARE_OF_CHECKED_END = 1 / 10  # memory
ROUNDED_UP = 1 + 1e-9  # the advised depth is enough, not a rounding error short of it; numerics
RING_INNER_SHARE = 0.85  # memory
RING_LARGEST_MM = 32.0  # common practice, no source
CUP_LARGEST_MM = 25.0  # common practice, no source
RING_SHARE_OF_END = 0.6  # memory
WIDEST_SHARE_OF_END = 0.9  # of a drive whose teeth begin where the person says; common practice, no source
LEAST_MEASURED_GRIP = 1e-5  # numerics: no thrust would do
MOST_MEASURED_GRIP = 10.0  # common practice, no source: above it the slip of a pen, or teeth that hold without thrust
MOST_SPURS = 6  # common practice, no source: more teeth stand in a ring
INNER_SHARE = {"four": 0.4, "two": 0.3, "ring": RING_INNER_SHARE, "cup": RING_INNER_SHARE, "point": 0.0}  # memory
TEETH = {"four": 4, "two": 2, "ring": 24, "cup": 0, "point": 0}  # common practice, no source
KIND_OF_METHOD = {
    "spur-drive": "four",
    "two-spur-drive": "two",
    "toothed-ring-drive": "ring",
    "cup-drive": "cup",
    "point-and-pin-drive": "point",
}
POINT_PIN_MM = 6.0  # common practice, no source


class Grip(NamedTuple):
    """Effective friction of a drive pressed into clean end grain: torque over thrust and mean radius."""

    low: float
    design: float
    typical: float
    high: float


class Drive(NamedTuple):
    """One drive center; diameters and lengths in mm, flank angles in degrees from the axis.

    `kind` is "four", "two", "ring", "cup" or "point"; `mean_radius` is where its teeth or rim bear;
    `bearing_length` is the part of each tooth's radial length that stands inside the end of the work.
    """

    kind: str
    teeth: int
    outer: float
    inner: float
    face_angle: float
    back_angle: float
    tooth_height: float | None
    share: float
    mean_radius: float
    bearing_length: float
    effective: Grip
    given: bool
    assumed: tuple[Assumption, ...]


GRIP_TABLE = Table(
    "drive_grip.csv",
    (Text("form"), *(Number(name, 0.05, 2.0) for name in Grip._fields), Text("source")),
    key=("form",),
    rows=4,
)


@lru_cache(maxsize=1)
def _grips() -> dict[str, Grip]:
    return {row.text("form"): Grip(*(row.number(name) for name in Grip._fields)) for row in load(GRIP_TABLE)}


def _clamp(value: float, low: float, high: float) -> float:
    return min(max(value, low), high)


def advised_outer(kind: str, side_grain: bool, diameter: float, end: float) -> float:
    """Outside diameter in mm recommended for work of this diameter and end, mm; source: common practice, no source."""
    if kind == "ring":
        return min(RING_LARGEST_MM, RING_SHARE_OF_END * end)
    if kind == "cup":
        return min(CUP_LARGEST_MM, RING_SHARE_OF_END * end)
    if kind == "point":
        return min(POINT_PIN_MM, end / 2)
    if side_grain:
        return _clamp(diameter / 4, 25.0, 50.0)
    if kind == "two":
        return min(50.0, end / 2)
    return min(end / 2, max(38.0, min(end / 3, 50.0)))


def _outer_round(given: GivenDrive | None, kind: str, situation: Situation) -> float:
    """The outside diameter in mm that is advised, wider where the person's own teeth begin farther out.

    It stays within the end as long as the teeth do.
    """
    body = situation.body
    advised = advised_outer(kind, situation.side_grain, body.diameter, body.end_diameter)
    inner = given.inner_diameter if given is not None else None
    if inner is None or inner < advised:
        return advised
    wider = inner / INNER_SHARE[kind] if INNER_SHARE[kind] > 0 else inner + advised
    widest = WIDEST_SHARE_OF_END * body.end_diameter
    return min(wider, widest) if inner < widest else wider


def kind_by_teeth(teeth: int) -> str:
    """The kind of drive that has so many teeth; common practice, no source."""
    return "two" if teeth == 2 else "four" if teeth <= MOST_SPURS else "ring"


def _given_kind(given: GivenDrive) -> str | None:
    if given.kind == "toothed":
        return "two" if given.teeth == 2 else "four"
    return {"toothed-ring": "ring", "cup": "cup", "point": "point"}.get(given.kind or "")


def _kind_and_given(situation: Situation, method: str) -> tuple[str, GivenDrive | None]:
    """The kind of drive judged, and the person's own drive where it is of that kind."""
    kind = KIND_OF_METHOD[method]
    hold = situation.case.hold
    given = hold.drive
    if given is None:
        return kind, None
    stated = _given_kind(given)
    if hold.method == method:
        return stated or kind, given
    if hold.method in KIND_OF_METHOD:
        return kind, None
    if stated is None and given.teeth is not None:
        stated = kind_by_teeth(given.teeth)
    return kind, given if stated in (None, kind) else None


def _effective(kind: str, face_angle: float, back_angle: float) -> Grip:
    if kind in ("ring", "cup"):
        return _grips()[kind]
    if kind == "point":
        return Grip(0.0, 0.0, 0.0, 0.0)
    return _grips()["chisel" if face_angle + back_angle <= CHISEL_INCLUDED_DEG else "teeth"]


class _Sizes:
    """Takes the person's value where there is one and notes every value it had to supply."""

    def __init__(self, given: GivenDrive | None) -> None:
        self.given = given
        self.assumed: list[Assumption] = []

    def take(self, name: str, advised: float, unit: str = " mm") -> float:
        own: float | None = getattr(self.given, name, None)
        if own is not None:
            return own
        self.assumed.append(Assumption(f"hold.drive.{name}", f"{advised:.3g}{unit}", "the size advised for this work"))
        return advised


def drive_for(situation: Situation, method: str) -> Drive | None:
    """The drive of one method: the person's own sizes, else the advised ones; None where nothing bites the end."""
    if method not in KIND_OF_METHOD:
        return None
    kind, given = _kind_and_given(situation, method)
    body = situation.body
    sizes = _Sizes(given)
    outer = sizes.take("outer_diameter", _outer_round(given, kind, situation))
    inner = sizes.take("inner_diameter", INNER_SHARE[kind] * outer)
    teeth, face, back = TEETH[kind], TOOTH_HALF_ANGLE_DEG, TOOTH_HALF_ANGLE_DEG
    if kind in ("four", "two"):
        teeth = int(sizes.take("teeth", teeth, ""))
        face = sizes.take("face_angle", face, "°")
        back = sizes.take("back_angle", back, "°")
    reach = min(outer, body.end_diameter)
    return Drive(
        kind=kind,
        teeth=teeth,
        outer=outer,
        inner=inner,
        face_angle=face,
        back_angle=back,
        tooth_height=given.tooth_height if given is not None else None,
        share=TOOTH_SHARE,
        mean_radius=(reach + min(inner, reach)) / 4,
        bearing_length=max(reach - inner, 0.0) / 2,
        effective=_effective(kind, face, back),
        given=given is not None and given.outer_diameter is not None,
        assumed=tuple(sizes.assumed),
    )


def measured_grip(situation: Situation, share: float, mean_radius: float) -> float | None:
    """Effective friction from the person's slip test; None where there was none."""
    test = situation.case.hold.slip_test
    if test is None:
        return None
    grip = test.torque / (share * test.thrust * mean_radius * 1e-3)
    return min(max(grip, LEAST_MEASURED_GRIP), MOST_MEASURED_GRIP)


def tooth_bearing(situation: Situation, drive: Drive, depth: float, f90_value: float) -> float:
    """Torque in N·m that teeth sunk `depth` mm carry at a proportional limit across the grain of `f90_value` MPa.

        T = N·p·L·h·r_m,  p = k_u·f90 in end grain

    In side grain half the teeth bear across the fibers and half along them, at min(f0, 2·k_u·f90).
    Defects at the end lower p. Valid for teeth 3 mm and longer in wood; source: derived, k_u from memory.
    """
    wood = situation.wood
    bearing = WORKING_FACTOR * f90_value
    if situation.side_grain and wood is not None:
        bearing = side_grain_bearing(wood.crushing.low, f90_value)
    bearing *= defect_share(situation)
    return drive.teeth * bearing * drive.bearing_length * depth * drive.mean_radius * 1e-3


def seat_depth(situation: Situation, drive: Drive, torque: float, safety: float) -> tuple[float, float]:
    """Depth in mm to seat the teeth for `torque` N·m at the factor `safety`, and the most that this end allows.

    d = SF·T/(N·k_u·f90·L·r_m), f90 mean; at least 2 mm, at most 6 mm (10 mm for two spurs in side grain), 80 % of the
    tooth and a fifth of the end, a tenth where it is checked. Where the most is under 2 mm, the most wins.
    """
    share = SEAT_SHARE_OF_CHECKED_END if situation.traits.checked else SEAT_SHARE_OF_END
    cap = MOST_SEAT_TWO_SIDE_MM if drive.kind == "two" and situation.side_grain else MOST_SEAT_MM
    most = min(cap, share * situation.body.end_diameter)
    if drive.tooth_height is not None:
        most = min(most, SEAT_SHARE_OF_TOOTH * drive.tooth_height)
    wood = situation.wood
    mean = wood.perpendicular.typical if wood is not None else 0.0
    per_mm = tooth_bearing(situation, drive, 1.0, mean)
    wanted = ROUNDED_UP * safety * torque / per_mm if per_mm > 0 else most
    return min(max(wanted, LEAST_SEAT_MM), most), most
