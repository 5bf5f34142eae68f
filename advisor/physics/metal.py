"""Speeds and warm parts when the center itself is made of metal."""

from __future__ import annotations

import math

from advisor.figure import Grade, figure
from advisor.quantity import K_rise, m_per_min, mm, per_K, rpm

LIGHT_LATHE_SHARE = 0.7  # of the table speed to start with on a light lathe; common practice, no source
# of the drilling speed; military manuals print a half, a third to a half, handbook rows 0.64; tm-1-420, hss-speed-table
REAM_SHARE_LOW = 1 / 3
REAM_SHARE = 0.5  # tm-1-420
REAM_SHARE_HIGH = 2 / 3  # hss-speed-table
HAND_HOT_C = 57.5  # steel just too hot to hold, 55 to 60 °C; from memory


@figure(
    title="spindle speed for a cutting speed",
    symbol="n",
    equation="v/(π·D)",
    unit="rpm",
    grade=Grade.CALCULATED,
    sources=("kinematics",),
    valid="any; start at 70 % of a table speed on a light lathe",
    section="7",
    symbols={"cutting_speed": "v", "diameter": "D"},
)
def spindle_speed(cutting_speed: m_per_min, diameter: mm) -> float:
    """Speed of the spindle that gives a cutting speed at a diameter.

    Formula  n = 1000·v/(π·D), v in m/min; 12·V/(π·D) in feet and inches
    Inputs   cutting_speed m/min, diameter mm
    Gives    rpm
    Valid    any
    Source   kinematics

    >>> round(spindle_speed(cutting_speed=30, diameter=25))
    382
    """
    return 1000 * cutting_speed / (math.pi * diameter)


@figure(
    title="cutting speed",
    symbol="v",
    equation="π·D·n",
    unit="m/min",
    grade=Grade.CALCULATED,
    sources=("kinematics",),
    valid="any",
    section="7",
    symbols={"diameter": "D", "rpm": "n"},
)
def cutting_speed(diameter: mm, rpm: rpm) -> float:
    """Speed of the surface under the tool.

    Formula  v = π·D·n/1000
    Inputs   diameter mm, rpm
    Gives    m/min
    Valid    any
    Source   kinematics

    >>> round(cutting_speed(diameter=25, rpm=382))
    30
    """
    return math.pi * diameter * rpm / 1000


@figure(
    title="growth of a warm part",
    symbol="ΔD",
    equation="D·α·ΔT",
    unit="µm",
    grade=Grade.CALCULATED,
    sources=("thermal-expansion",),
    valid="part warm through and through; wood moves more with moisture",
    section="7",
    symbols={"diameter": "D", "expansion": "α", "rise": "ΔT"},
)
def heat_growth(diameter: mm, expansion: per_K, rise: K_rise) -> float:
    """How much larger a warm part measures: let it cool before the last cut of a taper or a press fit.

    Formula  ΔD = D·α·ΔT
    Inputs   diameter mm, expansion per kelvin (11.5e-6 steel, 17.2e-6 stainless 303, 100e-6 acetal), rise K
    Gives    µm
    Valid    part warm through and through
    Source   linear thermal expansion; coefficients from memory

    >>> round(heat_growth(diameter=25, expansion=17.2e-6, rise=25), 2)
    10.75
    """
    return diameter * 1000 * expansion * rise
