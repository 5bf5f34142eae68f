"""The blank as a body: what it measures, what it weighs and where its mass is."""

import math
from typing import NamedTuple

from advisor.figure import Spread
from advisor.models.case import Case
from advisor.physics import balance
from advisor.situation.assumption import Ledger

CHECKS = frozenset({"check", "crack", "through-crack", "ring-shake"})
SOFT_WOOD = frozenset({"punky", "rot", "spalted"})
# Offset of the center of mass as a share of the diameter, when nobody measured it (memory, by shape and condition).
SHARE_TURNED_DRY = 0.002
SHARE_TURNED_GREEN = 0.005
SHARE_SAWN = 0.015
SHARE_SQUARE = 0.01
SHARE_LOG = 0.03
SHARE_IRREGULAR = 0.05
SHARE_UNEVEN = 0.02  # one side wet, crotch, burl, sapwood on one side
SHARE_HOLLOW = 0.05  # bark inclusion, void, rot
FEW_RADII = 12  # fewer than this miss a flat or a notch by up to 23 %
FEW_RADII_FACTOR = 1.2
AS_GIVEN, FROM_BALANCE, FROM_RADII = "as given", "from the balance test", "from the radii"
FROM_GEOMETRY = "half-log by its geometry"
MEASURED = frozenset({AS_GIVEN, FROM_BALANCE, FROM_RADII, FROM_GEOMETRY})  # not guessed from a shape

SAWN = frozenset({"disc", "octagon", "round", "tube", "ring", "sphere", "segmented"})
TRUED_STATES = frozenset({"round", "finished"})


class Body(NamedTuple):
    """Sizes in mm, mass in kg; `offset` is the distance of the center of mass from the axis in mm,
    the larger one of two ends.

    Measured at both ends, `static` is what both have in common (mm) and `couple` what turns the piece over (kg·mm²).
    """

    diameter: float
    length: float
    end_diameter: float
    thinnest: float
    mass: float
    mass_given: bool
    offset: float
    offset_from: str
    couple: float | None
    static: float | None


def swept_diameter(case: Case) -> float:
    """Twice the largest radius from the axis, in mm: the stated diameter, or more if a measured radius says so."""
    radii = (case.work.radii or ()) + (case.work.radii_far_end or ())
    return max([case.work.diameter, *(2 * r for r in radii)])


def end_diameter(form: str, diameter: float) -> float:
    """Diameter of the end face in mm; the side of a square, the flats of an octagon."""
    if form == "square":
        return diameter / math.sqrt(2)
    if form == "octagon":
        return diameter * math.cos(math.pi / 8)
    return diameter


def thinnest(case: Case, end: float) -> float:
    """Thinnest finished section in mm, the end face when nothing else is said."""
    given = [case.work.thinnest_diameter, case.work.finished_diameter]
    sizes = [end, *(size for size in given if size is not None)]
    if case.work.profile:
        sizes += [diameter for _, diameter in case.work.profile]
    return min(sizes)


def half_log_axis(case: Case, diameter: float, ledger: Ledger) -> tuple[float, float]:
    """Radius of the log the half came from and height of the axis over the flat, both in mm."""
    half = diameter / 2
    height = case.work.axis_from_flat
    if height is None:
        # a quarter of the log's radius: R/4 and R are the sides of the largest swept radius
        radius = half / math.hypot(1, 0.25)
        ledger.assume(
            "work.axis_from_flat", f"{radius / 4:.0f} mm", "a quarter of the height: the worst of ordinary practice"
        )
        return radius, radius / 4
    height = min(height, half)
    return max(math.sqrt(max(half**2 - height**2, 0.0)), height), height


def volume(case: Case, form: str, grain: str, diameter: float, log_radius: float | None) -> float:
    """Volume in mm³, on the heavy side where the shape is only named."""
    length = case.work.length
    area = math.pi / 4 * diameter**2
    wall = case.work.wall
    if form == "square":
        area = diameter**2 / 2
    elif form == "octagon":
        area = diameter**2 / math.sqrt(2)
    elif form == "half-log" and grain == "along" and log_radius is not None:
        area = math.pi / 2 * log_radius**2
    elif form in ("tube", "ring") and wall is not None and 2 * wall < diameter:
        area -= math.pi / 4 * (diameter - 2 * wall) ** 2
    elif form == "sphere":
        return math.pi / 6 * diameter**3
    return area * length


def base_share(form: str, state: str, green: bool) -> float:
    """Share of the diameter by which the center of mass is off, by shape alone."""
    if state in TRUED_STATES:
        return SHARE_TURNED_GREEN if green else SHARE_TURNED_DRY
    if form in SAWN:
        return SHARE_SAWN
    return {"square": SHARE_SQUARE, "log": SHARE_LOG}.get(form, SHARE_IRREGULAR)


def density_share(conditions: frozenset[str], one_side_wet: bool) -> float:
    """Share of the diameter added by uneven density that was stated or is visible."""
    if conditions & {"bark-inclusion", "void", "rot"}:
        return SHARE_HOLLOW
    return SHARE_UNEVEN if one_side_wet or conditions & {"crotch", "burl"} else 0.0


class Traits(NamedTuple):
    """The words that decide where the mass is."""

    form: str
    grain: str
    state: str
    conditions: frozenset[str]
    green: bool

    @property
    def checked(self) -> bool:
        """A check, a crack or a shake is in it."""
        return bool(self.conditions & CHECKS)


def measured_offset(case: Case, mass: float, traits: Traits, diameter: float) -> tuple[float, str] | None:
    """Offset in mm from what was measured, the largest finding, and how it was found; None if nothing was measured."""
    found: list[tuple[float, str]] = []
    work = case.work
    if work.offset is not None:
        found.append((work.offset, AS_GIVEN))
    if work.balance_test is not None:
        moment = work.balance_test.weight * work.balance_test.radius
        found.append((min(moment / mass, diameter / 2), FROM_BALANCE))  # no center of mass lies outside the work
    if work.radii:
        extra = density_share(traits.conditions, bool(work.one_side_wet)) * diameter
        ends = [end for end in (work.radii, work.radii_far_end) if end]
        largest = max(balance.offset_from_radii(radii=end) * radii_factor(end, traits) for end in ends)
        found.append((largest + extra, FROM_RADII))
    return max(found, key=lambda entry: entry[0]) if found else None


def radii_factor(radii: tuple[float, ...], traits: Traits) -> float:
    """A fifth more where few radii may step over a flat, a notch or a natural edge."""
    ragged = traits.form not in ("disc", "round") or "live-edge" in traits.conditions
    return FEW_RADII_FACTOR if len(radii) < FEW_RADII and ragged else 1.0


def shape_offset(case: Case, traits: Traits, diameter: float, log: tuple[float, float] | None) -> tuple[float, str]:
    """Offset in mm guessed from the shape, on the heavy side, and the words for it."""
    if traits.state not in TRUED_STATES and log is not None:
        return balance.half_log_offset(radius=log[0], axis_from_flat=log[1]), FROM_GEOMETRY
    form = "irregular" if "live-edge" in traits.conditions and traits.form not in ("half-log",) else traits.form
    share = base_share(form, traits.state, traits.green)
    share += density_share(traits.conditions, bool(case.work.one_side_wet))
    return share * diameter, f"{share:.3f} of the diameter, by shape and condition"


def settle_body(case: Case, traits: Traits, density: Spread, ledger: Ledger) -> Body:
    """Work out sizes, mass and offset; everything supplied is noted in the ledger."""
    diameter = swept_diameter(case)
    end = end_diameter(traits.form, diameter)
    is_half = traits.form == "half-log" and traits.grain == "along"
    log = half_log_axis(case, diameter, ledger) if is_half else None
    mass = case.work.mass
    if mass is None:
        mass = volume(case, traits.form, traits.grain, diameter, log[0] if log else None) * density.high * 1e-9
        ledger.assume("work.mass", f"{mass:.2g} kg", "volume of the stated shape at the high end of the density")
    measured = measured_offset(case, mass, traits, diameter)
    if measured is not None:
        offset, how = measured
    else:
        offset, how = shape_offset(case, traits, diameter, log)
        ledger.assume("work.offset", f"{offset:.2g} mm", how)
    _note_few_radii(case, traits, ledger)
    static, couple = _both_ends(case, mass)
    return Body(
        diameter=diameter,
        length=case.work.length,
        end_diameter=end,
        thinnest=thinnest(case, end),
        mass=mass,
        mass_given=case.work.mass is not None,
        offset=offset,
        offset_from=how,
        couple=couple,
        static=static,
    )


def _note_few_radii(case: Case, traits: Traits, ledger: Ledger) -> None:
    if case.work.radii and radii_factor(case.work.radii, traits) > 1:
        why = f"fewer than {FEW_RADII} radii can step over a flat or a notch: measure {FEW_RADII} or more"
        ledger.assume("offset from few radii", f"{FEW_RADII_FACTOR:g} times", why)


def _both_ends(case: Case, mass: float) -> tuple[float | None, float | None]:
    """Static offset in mm and couple in kg·mm² of radii at both ends: half the mass at each end.

    U_c = (m/2)·|e_near − e_far|/2·L; one line along the blank starts both lists. Source: geometry, dynamics.
    """
    if not (case.work.radii and case.work.radii_far_end):
        return None, None
    near, far = (balance.center_from_radii(radii) for radii in (case.work.radii, case.work.radii_far_end))
    common = math.hypot(near[0] + far[0], near[1] + far[1]) / 2
    skew = math.hypot(near[0] - far[0], near[1] - far[1]) / 2
    return common, mass * skew * case.work.length / 2
