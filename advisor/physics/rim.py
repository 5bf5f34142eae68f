"""The rim: the trade's speed rule and the energy that turns or flies."""

from __future__ import annotations

from advisor.figure import Grade, figure
from advisor.physics.balance import angular
from advisor.quantity import kg, m_per_s, mm, positive, rpm

MM_PER_INCH = 25.4  # exact by definition; `advisor.units` has it too, and a figure is asked for without that
FACE_SHIELD_TEST_J = 6.2  # 500 g from 1.27 to 1.30 m: high-mass impact test of ANSI Z87.1-2003


@figure(
    title="speed by the trade's rim rule",
    symbol="n",
    equation="K/D",
    unit="rpm",
    grade=Grade.PRACTICE,
    sources=("common-practice",),
    valid="a cap beside the other limits; D is twice the largest radius from the axis",
    section="4.7",
    symbols={"diameter": "D", "band": "K"},
)
def rim_rule_speed(diameter: mm, band: positive) -> float:
    """Speed at which diameter in inches times rpm reaches a band of the trade: a constant speed of the rim.

    Formula  n = K/D, K in inch·rpm
    Inputs   diameter mm (twice the largest radius from the axis), band inch·rpm: 3000 cracked to 9000
             finished and sound
    Gives    rpm
    Valid    a cap, beside every other limit
    Source   common practice, no source

    >>> rim_rule_speed(diameter=254, band=9000)
    900.0
    """
    return band * MM_PER_INCH / diameter


@figure(
    title="speed of the rim",
    symbol="v",
    equation="π·D·n",
    unit="m/s",
    grade=Grade.CALCULATED,
    sources=("kinematics",),
    valid="any",
    section="4.7",
    symbols={"diameter": "D", "rpm": "n"},
)
def rim_speed(diameter: mm, rpm: rpm) -> float:
    """Speed of the rim.

    Formula  v = π·D·n/60
    Inputs   diameter mm, rpm
    Gives    m/s
    Valid    any
    Source   kinematics

    >>> round(rim_speed(diameter=300, rpm=1000), 2)
    15.71
    """
    return angular(rpm) * diameter / 2000


@figure(
    title="energy of a thrown piece",
    symbol="W",
    equation="½·m·v²",
    unit="J",
    grade=Grade.CALCULATED,
    sources=("dynamics",),
    valid="any; 6.2 J is the high-mass impact test of a face shield (ANSI Z87.1-2003)",
    section="4.7",
    symbols={"mass": "m", "speed": "v"},
)
def fragment_energy(mass: kg, speed: m_per_s) -> float:
    """Energy of a piece that lets go, to be held against the 6.2 J that a face shield is tested with.

    Formula  W = ½·m·v²
    Inputs   mass kg, speed m/s
    Gives    J
    Valid    any
    Source   dynamics; yardstick ANSI Z87.1-2003

    >>> round(fragment_energy(mass=0.2, speed=12), 1)
    14.4
    """
    return mass * speed**2 / 2


@figure(
    title="energy of the spinning blank",
    symbol="W",
    equation="¼·m·(D/2)²·ω²",
    unit="J",
    grade=Grade.CALCULATED,
    sources=("dynamics",),
    valid="solid cylinder about its axis",
    section="4.7",
    symbols={"mass": "m", "diameter": "D", "angular_speed": "ω"},
    also=lambda rpm, **_: {"angular_speed": (angular(rpm), "rad/s")},
)
def spinning_energy(mass: kg, diameter: mm, rpm: rpm) -> float:
    """Energy stored in a blank that turns about its axis.

    Formula  W = ¼·m·R²·ω², R = D/2, ω = 2·π·n/60
    Inputs   mass kg, diameter mm, rpm
    Gives    J
    Valid    solid cylinder
    Source   dynamics

    >>> round(spinning_energy(mass=5, diameter=300, rpm=600))
    111
    """
    return mass * (diameter / 2000 * angular(rpm)) ** 2 / 4
