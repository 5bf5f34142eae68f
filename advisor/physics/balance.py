"""Out-of-round and unbalanced blanks, and the lathe they shake."""

from __future__ import annotations

import math
from collections.abc import Sequence

from advisor.figure import Also, Grade, NoAnswer, figure
from advisor.quantity import (
    FigureInputError,
    factor_number,
    friction_number,
    kg,
    lengths,
    mm,
    mm_or_zero,
    positive,
    rpm,
    turning_rpm,
)

GRAVITY = 9.80665  # m/s²; exact by definition
FEWEST_RADII = 6  # derived: fewer are off by a sixth and more
MOST_RADII = 72  # numerics
SHARE_OF_FLOOR_FORCE = 0.5  # of what slides or tips; memory
SHARE_BOLTED = 0.15  # of the weight, lathe bolted to the floor or a heavy bench; memory
MM_PER_M = 1000.0  # exact


def angular(rpm: float) -> float:
    """Turning speed in rad/s: 2π·n/60. Source: definition."""
    return math.tau * rpm / 60


def per_minute(angular_speed: float) -> float:
    """Turning speed in rpm of one in rad/s. Source: definition."""
    return angular_speed * 60 / math.tau


def center_from_radii(radii: Sequence[float]) -> tuple[float, float]:
    """Center of mass (x, y) in mm of a section measured by its radii in mm at equal angles, the first on the x axis.

    A = (π/N)·Σr², (Cx, Cy) = (2π/3NA)·Σr³·(cosθ, sinθ). Not the corner-to-corner polygon, which is low by a third with
    4 radii and by a twentieth with 12. Raises FigureInputError for fewer than 6 or more than 72. Source: geometry.

    >>> x, y = center_from_radii([100, 104, 110, 104, 100, 96, 90, 96])
    >>> round((x * x + y * y) ** 0.5, 2)
    7.82
    """
    count = len(radii)
    if not FEWEST_RADII <= count <= MOST_RADII:
        raise FigureInputError("radii", f"{count} radii", f"{FEWEST_RADII} to {MOST_RADII} radii at equal angles")
    step = math.tau / count
    area = sum(radius**2 for radius in radii)  # the common factor π/N of both sums cancels
    if area <= 0:
        raise FigureInputError("radii", "all zero", "radii from the axis, at least one above zero")
    x = sum(radius**3 * math.cos(place * step) for place, radius in enumerate(radii))
    y = sum(radius**3 * math.sin(place * step) for place, radius in enumerate(radii))
    return 2 * x / (3 * area), 2 * y / (3 * area)


def _heavy_side(radii: Sequence[float]) -> Also:
    x, y = center_from_radii(radii)
    return {"direction": (math.degrees(math.atan2(y, x)) % 360, "°")}


@figure(
    title="distance of the center of mass from the axis, from radii",
    symbol="e",
    equation="(2/3)·|Σ r³·(cosθ, sinθ)|/Σ r²",
    unit="mm",
    grade=Grade.CALCULATED,
    sources=("geometry",),
    valid="6 to 72 radii at equal angles, even density; 12 or more where there is a flat, a live edge or a notch",
    section="4.1",
    symbols={"radii": "r"},
    also=_heavy_side,
)
def offset_from_radii(radii: lengths) -> float:
    """How far the middle of the mass is from the axis, from radii measured at equal angles over one turn.

    Formula  e = (2/3)·|Σ r³·(cosθ, sinθ)|/Σ r²
    Inputs   radii mm, 6 to 72 of them, at equal angles, one turn
    Gives    mm; `direction` is the heavy side in degrees from the first radius
    Valid    even density; an outline with a flat or a notch is missed by up to 23 % with 6 or 8 radii, 4 % with 12
    Errors   another number of radii is refused
    Source   geometry; polar area and first moment

    >>> round(offset_from_radii([100, 104, 110, 104, 100, 96, 90, 96]), 2)
    7.82
    """
    return math.hypot(*center_from_radii(radii))


@figure(
    title="offset of a half-log turned along its grain",
    symbol="e",
    equation="|4·R/(3·π) − y|",
    unit="mm",
    grade=Grade.CALCULATED,
    sources=("geometry",),
    valid="half of a round log, even density",
    section="4.1",
    symbols={"radius": "R", "axis_from_flat": "y"},
)
def half_log_offset(radius: mm, axis_from_flat: mm_or_zero) -> float:
    """Distance of the center of mass of a half-log from the turning axis.

    Formula  e = |4·R/(3·π) − y|
    Inputs   radius mm of the log, axis_from_flat mm: height of the axis over the sawn flat
    Gives    mm
    Valid    half of a round log, even density; axis along the log
    Source   geometry; center of a half disc

    >>> round(half_log_offset(radius=100, axis_from_flat=0), 1)
    42.4
    """
    return abs(4 * radius / (3 * math.pi) - axis_from_flat)


def density_offset(share: float, radius: float) -> float:
    """Offset mm of a round blank one half of which is denser by `share` of the mean: share·2R/(3π). Source: geometry.

    >>> round(density_offset(0.2, 100.0), 2)
    4.24
    """
    return share * 2 * radius / (3 * math.pi)


@figure(
    title="force of the unbalance",
    symbol="F_u",
    equation="m·e·ω²",
    unit="N",
    grade=Grade.CALCULATED,
    sources=("dynamics",),
    valid="rigid blank",
    section="4.2",
    symbols={"mass": "m", "offset": "e", "angular_speed": "ω"},
    also=lambda rpm, **_: {"angular_speed": (angular(rpm), "rad/s")},
)
def unbalance_force(mass: kg, offset: mm_or_zero, rpm: rpm) -> float:
    """Force that an off-center blank turns round with; the weight comes on top.

    Formula  F_u = m·e·ω², ω = 2·π·n/60
    Inputs   mass kg, offset mm of the center of mass from the axis, rpm
    Gives    N
    Valid    rigid blank
    Source   dynamics

    >>> round(unbalance_force(mass=10, offset=10, rpm=600))
    395
    """
    return mass * offset / MM_PER_M * angular(rpm) ** 2


@figure(
    title="balance quality",
    symbol="G",
    equation="e·ω",
    unit="mm/s",
    grade=Grade.CALCULATED,
    sources=("iso-21940-11",),
    valid="a yardstick only: the standard is for rotors with rigid behavior in their own bearings",
    section="4.3",
    symbols={"offset": "e", "angular_speed": "ω"},
    also=lambda rpm, **_: {"angular_speed": (angular(rpm), "rad/s")},
)
def balance_grade(offset: mm_or_zero, rpm: rpm) -> float:
    """Speed of the center of mass on its small circle, by which the standard grades balance.

    Formula  G = e·ω, ω = 2·π·n/60
    Inputs   offset mm, rpm
    Gives    mm/s
    Valid    a yardstick, never a limit: a rough blank is far outside the standard
    Source   ISO 21940-11:2016, balance quality grades

    >>> round(balance_grade(offset=10, rpm=600))
    628
    """
    return offset * angular(rpm)


@figure(
    title="offset that a balance grade permits",
    symbol="e_per",
    equation="G/ω",
    unit="µm",
    grade=Grade.CALCULATED,
    sources=("iso-21940-11",),
    valid="rotors with rigid behavior; a yardstick for a blank",
    section="4.3",
    symbols={"grade": "G", "angular_speed": "ω"},
    also=lambda rpm, **_: {"angular_speed": (angular(rpm), "rad/s")},
)
def permissible_offset(grade: positive, rpm: turning_rpm) -> float:
    """Offset of the center of mass that a balance quality grade permits at a speed.

    Formula  e_per = G/ω, ω = 2·π·n/60
    Inputs   grade mm/s (0.4, 1, 2.5, 6.3, 16, 40, 100, 250 ...), rpm
    Gives    µm, the same number as g·mm/kg
    Valid    rotors with rigid behavior in their own bearings
    Source   ISO 21940-11:2016

    >>> round(permissible_offset(grade=6.3, rpm=3000), 2)
    20.05
    """
    return grade / angular(rpm) * 1000


@figure(
    title="rotating force at which the lathe slides",
    symbol="F_slide",
    equation="µ·m·g/√(1 + µ²)",
    unit="N",
    grade=Grade.CALCULATED,
    sources=("floor-model",),
    valid="free-standing lathe on a level floor",
    section="4.4",
    symbols={"mass": "m", "friction": "µ"},
)
def slide_force(mass: kg, friction: friction_number) -> float:
    """Smallest rotating force that moves the lathe over the floor at some angle of the turn.

    Formula  F_slide = µ·m·g/√(1 + µ²)
    Inputs   mass kg of lathe and blank, friction on the floor
    Gives    N
    Valid    free-standing on a level floor; the force lifts and pushes at the same time
    Source   statics

    >>> round(slide_force(mass=120, friction=0.4))
    437
    """
    return friction * mass * GRAVITY / math.sqrt(1 + friction**2)


@figure(
    title="rotating force at which the lathe tips",
    symbol="F_tip",
    equation="m·g·b/√(b² + h²)",
    unit="N",
    grade=Grade.CALCULATED,
    sources=("floor-model",),
    valid="free-standing lathe on a level floor, weight over the middle of its base",
    section="4.4",
    symbols={"mass": "m", "half_base": "b", "spindle_height": "h"},
)
def tip_force(mass: kg, half_base: mm, spindle_height: mm) -> float:
    """Smallest rotating force at the spindle that lifts one foot of the lathe.

    Formula  F_tip = m·g·b/√(b² + h²)
    Inputs   mass kg of lathe and blank, half_base mm: half the width over the feet, spindle_height mm over the floor
    Gives    N
    Valid    weight over the middle of the base
    Source   statics

    >>> round(tip_force(mass=120, half_base=250, spindle_height=1100))
    261
    """
    return mass * GRAVITY * half_base / math.hypot(half_base, spindle_height)


def floor_force(mass: float, friction: float, half_base: float, spindle_height: float, amplification: float) -> float:
    """Rotating force in N that a free-standing lathe is let carry: half of what slides or tips it, over its rocking.

    `mass` kg of lathe and blank, lengths mm. Source: statics; the half and the amplification (1.5 heavy iron,
    3 ordinary, 5 light) from memory.

    >>> round(floor_force(120, 0.4, 250, 1100, 3))
    43
    """
    weakest = min(slide_force(mass, friction), tip_force(mass, half_base, spindle_height))
    return SHARE_OF_FLOOR_FORCE * weakest / amplification


def bolted_force(mass: float) -> float:
    """Rotating force in N that a bolted lathe is let carry: 15 % of the weight of lathe and bench. From memory.

    >>> round(bolted_force(200))
    294
    """
    return SHARE_BOLTED * mass * GRAVITY


def speed_of_force(force: float, mass: float, offset: float) -> float:
    """Speed in rpm at which a blank of `mass` kg with `offset` mm turns with that force in N: (30/π)·√(F/(m·e)).

    Raises NoAnswer for a blank without offset, which makes no force at any speed. Source: dynamics.

    >>> round(speed_of_force(60.0, 10.0, 10.0))
    234
    """
    if offset <= 0:
        raise NoAnswer("a blank without offset turns with no force of its own")
    return per_minute(math.sqrt(force / (mass * offset / MM_PER_M)))


@figure(
    title="speed at which the lathe begins to walk",
    symbol="n",
    equation="(30/π)·√(F_allow/(m·e))",
    unit="rpm",
    grade=Grade.ROUGH_GUIDE,
    sources=("floor-model", "memory"),
    valid="free-standing lathe; going faster through the rocking is never safe",
    section="4.4",
    symbols={"blank_mass": "m", "offset": "e", "allowed_force": "F_allow"},
    also=lambda lathe_mass, blank_mass, friction, half_base, spindle_height, amplification, **_: {
        "allowed_force": (
            floor_force(lathe_mass + blank_mass, friction, half_base, spindle_height, amplification),
            "N",
        )
    },
)
def walking_speed(
    lathe_mass: kg,
    blank_mass: kg,
    offset: mm_or_zero,
    friction: friction_number,
    half_base: mm,
    spindle_height: mm,
    amplification: factor_number,
) -> float:
    """Speed that an off-center blank may reach before a free-standing lathe walks or rocks.

    Formula  n = (30/π)·√(F_allow/(m·e)), F_allow = 0.5·min(F_slide, F_tip)/amplification
    Inputs   lathe_mass kg, blank_mass kg, offset mm, friction on the floor (0.4), half_base mm, spindle_height mm,
             amplification of the stand: 1.5 heavy iron, 3 ordinary, 5 light folded sheet
    Gives    rpm
    Valid    the force is calculated, the allowance for rocking at 300 to 900 rpm is from memory
    Errors   no answer for a blank without offset
    Source   statics and dynamics; the allowance from memory

    >>> round(walking_speed(lathe_mass=110, blank_mass=10, offset=10, friction=0.4, half_base=250,
    ...                     spindle_height=1100, amplification=3))
    199
    """
    force = floor_force(lathe_mass + blank_mass, friction, half_base, spindle_height, amplification)
    return speed_of_force(force, blank_mass, offset)


@figure(
    title="counterweight",
    symbol="m_c",
    equation="m·e/r_c",
    unit="g",
    grade=Grade.CALCULATED,
    sources=("dynamics",),
    valid="weight opposite the heavy side, in the same plane",
    section="4.6",
    symbols={"mass": "m", "offset": "e", "radius": "r_c"},
)
def counterweight(mass: kg, offset: mm_or_zero, radius: mm) -> float:
    """Weight that balances an off-center blank; its own fixing must hold m_c·r_c·ω² five times over.

    Formula  m_c = m·e/r_c
    Inputs   mass kg, offset mm, radius mm at which the weight sits
    Gives    g
    Valid    opposite the heavy side and in its plane; moving the axis is better
    Source   dynamics

    >>> round(counterweight(mass=10, offset=10, radius=120))
    833
    """
    return mass * 1000 * offset / radius
