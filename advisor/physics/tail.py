"""What the tailstock may press: crushing, splitting, and the handwheel. Sections 2.1 to 2.3, 2.5 and 2.6."""

from __future__ import annotations

import math

from advisor.figure import Also, Grade, figure
from advisor.quantity import (
    FigureInputError,
    GPa,
    J_per_m2,
    MPa,
    N,
    Nm,
    friction_number,
    half_angle_deg,
    mm,
    mm_or_zero,
    part_number,
    share_number,
)

LIP_ANGLE_DEG = 30.0  # flank of a cup's lip, from the axis; memory
FRACTURE_ENERGY_LEAST = 100.0  # J/m²; memory
FRACTURE_ENERGY_MOST = 500.0  # memory
POISSON_SHELL = 0.3  # part of the model of a bored end; bore-model, memory
LONG_ENOUGH = 10.0  # λ·L from which the far end no longer matters; numerics
RELAXED_SHARE = 0.6  # of the thrust that was set, left after the first minutes; common practice and memory
COLLAR_SHARE = 0.7  # of the screw's efficiency that its thrust collar leaves; memory
# of the diameter: wood across the split plane that gives; part of the split model; split-model, memory
FOUNDATION_SHARE = 0.25
HALF_ROUND = 0.1098  # second moment of a half disc about its own axis over R⁴; geometry; exact
_MPA_PER_GPA = 1000.0  # exact


def _contact_diameter(thrust: float, end_strength: float) -> float:
    return math.sqrt(4 * thrust / (math.pi * end_strength))


@figure(
    title="depth that a cone or point sinks into the end",
    symbol="h",
    equation="√(4·F/(π·p))/(2·tan(α))",
    unit="mm",
    grade=Grade.ESTIMATE,
    sources=("wood-handbook-5", "statics"),
    valid="clean end grain; end strength 1.0 to 1.5 of the crushing strength",
    section="2.1",
    symbols={"thrust": "F", "end_strength": "p", "half_angle": "α"},
    also=lambda thrust, end_strength, **_: {"contact_diameter": (_contact_diameter(thrust, end_strength), "mm")},
)
def cone_sink(thrust: N, end_strength: MPa, half_angle: half_angle_deg) -> float:
    """How deep a cone or point sinks until the wood under it carries the thrust.

    Formula  h = d_c/(2·tan α), d_c = √(4·F/(π·p))
    Inputs   thrust N, end_strength MPa (the crushing strength, up to 1.5 of it), half_angle degrees from the axis
    Gives    mm; `contact_diameter` is d_c
    Valid    clean end grain
    Source   strengths of the Wood Handbook, chapter 5; statics

    >>> round(cone_sink(thrust=1000, end_strength=54, half_angle=30), 1)
    4.2
    """
    return _contact_diameter(thrust, end_strength) / (2 * math.tan(math.radians(half_angle)))


@figure(
    title="thrust that crushes the wood under a ring",
    symbol="F",
    equation="(π/4)·(D² − d²)·f",
    unit="N",
    grade=Grade.ESTIMATE,
    sources=("wood-handbook-5", "statics"),
    valid="flat ring on a faced end, no divisor in it",
    section="2.1",
    symbols={"outer_diameter": "D", "inner_diameter": "d", "strength": "f"},
)
def ring_crush_force(outer_diameter: mm, inner_diameter: mm_or_zero, strength: MPa) -> float:
    """Thrust at which a flat ring crushes the wood under it; an inner diameter of zero is a pad.

    Formula  F = (π/4)·(D² − d²)·f
    Inputs   outer_diameter mm, inner_diameter mm, strength MPa (lower 5 % value for a limit)
    Gives    N, without a divisor
    Valid    even pressure on a faced end
    Errors   an inner diameter that is not smaller than the outer is refused
    Source   strengths of the Wood Handbook, chapter 5; statics

    >>> round(ring_crush_force(outer_diameter=24, inner_diameter=22, strength=54), -2)
    3900.0
    """
    if inner_diameter >= outer_diameter:
        raise FigureInputError("inner_diameter", inner_diameter, f"less than the outer diameter {outer_diameter:g} mm")
    return math.pi / 4 * (outer_diameter**2 - inner_diameter**2) * strength


def cup_crush_width(lip_height: float) -> float:
    """Width in mm of the ring that the lip of a cup center presses when it has sunk in: 2·h·tan 30°.

    A lip that sinks in is not a failure. Source: geometry; lip height 1.25 mm where it is not known (memory).

    >>> round(cup_crush_width(1.25), 2)
    1.44
    """
    return 2 * lip_height * math.tan(math.radians(LIP_ANGLE_DEG))


def _opening(half_angle: float, friction: float) -> float:
    """1/tan(α + φ), zero where the flank is too blunt to slide in."""
    lean = math.radians(half_angle) + math.atan(friction)
    return 1 / math.tan(lean) if lean < math.pi / 2 else 0.0


@figure(
    title="force with which a cone opens the end",
    symbol="S",
    equation="F/(π·tan(α + atan(µ)))",
    unit="N",
    grade=Grade.CALCULATED,
    sources=("statics",),
    valid="the cone slides into clean wood and carries all of the thrust; friction is what is uncertain",
    section="2.2",
    symbols={"thrust": "F", "half_angle": "α", "friction": "µ"},
)
def cone_splitting_force(thrust: N, half_angle: half_angle_deg, friction: friction_number) -> float:
    """Force with which a cone or point pulls the two halves of the end apart.

    Formula  S = F/(π·tan(α + atan µ))
    Inputs   thrust N, half_angle degrees from the axis, friction (the low end is the careful one)
    Gives    N; zero where the flank is too blunt to slide in
    Valid    the cone carries all of the thrust; a pilot hole halves the risk but not this force
    Source   statics; pressure summed round the cone

    >>> round(cone_splitting_force(thrust=1000, half_angle=30, friction=0.35))
    274
    """
    return thrust / math.pi * _opening(half_angle, friction)


@figure(
    title="force with which a wedge across the end opens it",
    symbol="S",
    equation="F/(2·tan(α + atan(µ)))",
    unit="N",
    grade=Grade.CALCULATED,
    sources=("statics",),
    valid="straight edge across the end that slides into clean wood and carries all of the thrust",
    section="2.2",
    symbols={"thrust": "F", "half_angle": "α", "friction": "µ"},
)
def wedge_splitting_force(thrust: N, half_angle: half_angle_deg, friction: friction_number) -> float:
    """Force with which a straight wedge across the end (a two-spur bar) pulls the two halves apart.

    Formula  S = F/(2·tan(α + atan µ))
    Inputs   thrust N, half_angle degrees from the axis, friction (the low end is the careful one)
    Gives    N; zero where the flank is too blunt to slide in
    Valid    the wedge carries all of the thrust
    Source   statics

    >>> round(wedge_splitting_force(thrust=1000, half_angle=30, friction=0.35))
    430
    """
    return thrust / 2 * _opening(half_angle, friction)


def fracture_energy(density: float) -> float:
    """Fracture energy across the grain in J/m² from density in kg/m³: 1.07·ρ − 162, kept between 100 and 500.

    From softwoods. Source: CIB-W18 paper 23-19-2, Larsen and Gustafsson, 1990, quoted from memory.

    >>> round(fracture_energy(450), 1)
    319.5
    """
    return min(max(1.07 * density - 162, FRACTURE_ENERGY_LEAST), FRACTURE_ENERGY_MOST)


def split_beam_capacity(stress: float, width: float, decay: float, crack_depth: float) -> float:
    """Opening force in N at the end of a beam on springs whose springs give way at `stress` MPa.

    σ·b/(2·λ·(1 + λ·a)): `width` mm of the split plane, `decay` λ in 1/mm, `crack_depth` a in mm. Source: beam on an
    elastic foundation, derived.

    >>> round(split_beam_capacity(5.0, 50.0, 0.05, 0.0))
    2500
    """
    return stress * width / (2 * decay * (1 + decay * crack_depth))


def split_beam_decay(foundation: float, width: float, modulus: float, second_moment: float) -> float:
    """λ in 1/mm of a beam on springs: (k·b/(4·E·I))^¼, with k in MPa per mm, b mm, E GPa, I mm⁴. Source: as above."""
    return math.pow(foundation * width / (4 * modulus * _MPA_PER_GPA * second_moment), 0.25)


def split_stress(tension_perpendicular: float, fracture_energy: float, foundation: float) -> float:
    """Stress in MPa at which the springs give way: the lesser of strength and √(G_c·k), MPa, J/m², MPa per mm."""
    return min(tension_perpendicular, math.sqrt(fracture_energy * 1e-3 * foundation))  # J/m² = 1e-3 N/mm


def split_foundation(modulus_perpendicular: float, diameter: float) -> float:
    """Stiffness in MPa per mm of opening of the wood across the split plane: E_90/(0.25·D), GPa and mm."""
    return modulus_perpendicular * _MPA_PER_GPA / (FOUNDATION_SHARE * diameter)


def short_split_share(diameter: float, length: float) -> float:
    """Share of the opening force that is left where a piece is short, at most 1; diameter and length in mm.

    (sinh²x − sin²x)/(sinh x·cosh x − sin x·cos x), x = λ·L, and x/2 where the halves stay straight; of one stiffness
    along and across λ = (1/0.1098)^¼/(D/2). Source: beam of finite length on an elastic foundation, loaded at its end,
    derived.

    >>> round(short_split_share(50.0, 10.0), 3), short_split_share(50.0, 500.0)
    (0.347, 1.0)
    """
    reach = math.pow(HALF_ROUND, -0.25) / (diameter / 2) * length
    if reach <= 0.0:
        return 0.0
    if reach > LONG_ENOUGH:
        return 1.0
    wide, narrow = math.sinh(reach), math.sin(reach)
    return min((wide**2 - narrow**2) / (wide * math.cosh(reach) - narrow * math.cos(reach)), 1.0)


def bore_split_capacity(diameter: float, wall: float, tension: float) -> float:
    """Force in N that opens a tube from inside its end: S = f·t·√(R·t)/(3·(1 − ν²))^¼, R to the middle of the wall.

    Diameter and wall mm, tension MPa across what opens. Valid for walls to a third of the radius; for wood, stiffer
    along than around, on the safe side. Source: cylindrical shell with a ring load at its end, derived.

    >>> round(bore_split_capacity(90.0, 12.0, 3.0))
    606
    """
    radius = max((diameter - wall) / 2, 0.0)
    return tension * wall * math.sqrt(radius * wall) / math.pow(3 * (1 - POISSON_SHELL**2), 0.25)


def _split_parts(
    diameter: float,
    tension_perpendicular: float,
    modulus_perpendicular: float,
    modulus_along: float,
    fracture_energy: float,
    **_: float,
) -> Also:
    """Stress that opens the split plane, and λ of the half-round beam on its springs."""
    foundation = split_foundation(modulus_perpendicular, diameter)
    half = HALF_ROUND * (diameter / 2) ** 4
    return {
        "opening_stress": (split_stress(tension_perpendicular, fracture_energy, foundation), "MPa"),
        "decay": (split_beam_decay(foundation, diameter, modulus_along, half), "/mm"),
    }


@figure(
    title="opening force that splits the end of a blank",
    symbol="S_cap",
    equation="σ_c·D·q/(2·λ·(1 + λ·a))",
    unit="N",
    grade=Grade.ROUGH_GUIDE,
    sources=("split-model", "cib-w18-23-19-2", "record-1914"),
    valid="straight grain, end grain; hidden checks are not in it",
    section="2.3",
    symbols={"diameter": "D", "crack_depth": "a", "sound": "q", "opening_stress": "σ_c", "decay": "λ"},
    also=_split_parts,
)
def split_capacity(
    diameter: mm,
    tension_perpendicular: MPa,
    modulus_perpendicular: GPa,
    modulus_along: GPa,
    fracture_energy: J_per_m2,
    crack_depth: mm_or_zero = 0.0,
    sound: share_number = 1.0,
) -> float:
    """Opening force at which the end of a round blank splits; its trend is to be trusted more than its size.

    Formula  S_cap = σ_c·D·q/(2·λ·(1 + λ·a)), σ_c = min(f_t90, √(G_c·k)), k = E_90/(0.25·D),
             λ = (k·D/(4·E_L·I))^¼, I = 0.1098·(D/2)⁴
    Inputs   diameter mm, tension_perpendicular MPa, modulus_perpendicular GPa (0.8), modulus_along GPa (12),
             fracture_energy J/m², crack_depth mm from the end along the fibers, sound: unbroken share of the diameter
    Gives    N, before any divisor
    Valid    straight grain; on the safe side of published cleavage loads by 18 to 47 %
    Source   half-round beam on an elastic foundation, derived; fracture energy from CIB-W18 paper 23-19-2; checked
             against The Mechanical Properties of Wood, Record, 1914, table XIII

    >>> round(split_capacity(diameter=50, tension_perpendicular=7, modulus_perpendicular=0.8, modulus_along=12,
    ...                      fracture_energy=300), -1)
    3100.0
    """
    parts = _split_parts(diameter, tension_perpendicular, modulus_perpendicular, modulus_along, fracture_energy)
    return split_beam_capacity(parts["opening_stress"][0], diameter * sound, parts["decay"][0], crack_depth)


@figure(
    title="thrust from the handwheel",
    symbol="F",
    equation="2·π·η·M/p",
    unit="N",
    grade=Grade.ESTIMATE,
    sources=("screw-theory", "memory"),
    valid="efficiency 0.15 to 0.35, known only from memory",
    section="2.5",
    symbols={"torque": "M", "lead": "p", "efficiency": "η"},
)
def handwheel_thrust(torque: Nm, lead: mm, efficiency: part_number = 0.25) -> float:
    """Thrust that a torque at the tailstock's handwheel makes. Two fingers (2 N·m) already give about 0.8 kN.

    Formula  F = 2·π·η·M/p
    Inputs   torque N·m, lead mm of the screw, efficiency (0.25; high for a limit, low for a drive)
    Gives    N
    Valid    efficiency 0.15 to 0.35 from memory
    Source   work of the torque over one turn

    >>> round(handwheel_thrust(torque=2, lead=4))
    785
    """
    return math.tau * efficiency * torque * 1000 / lead


def handwheel_torque(thrust: float, lead: float, efficiency: float = 0.25) -> float:
    """Torque in N·m at the handwheel for a thrust in N with a screw of that lead in mm: F·p/(2π·η).

    Source: work of the torque over one turn; efficiency from memory.

    >>> round(handwheel_torque(785.4, 4.0), 2)
    2.0
    """
    return thrust * lead / 1000 / (math.tau * efficiency)


def screw_efficiency(lead: float, pitch_diameter: float, friction: float, flank_angle: float) -> float:
    """Efficiency of the tailstock's screw alone, tan λ/tan(λ + ρ'); its collar leaves about 0.7 of it.

    Lengths mm, `flank_angle` degrees. Source: power-screw theory.

    >>> round(screw_efficiency(4, 18, 0.15, 14.5), 3)
    0.31
    """
    climb = math.atan(lead / (math.pi * pitch_diameter))
    rub = math.atan(friction / math.cos(math.radians(flank_angle)))
    return math.tan(climb) / math.tan(climb + rub)
