"""Relations used everywhere: grain angle, moisture, scatter and how resistance and load are kept apart."""

from __future__ import annotations

import math

from advisor.figure import Grade, NoAnswer, figure
from advisor.quantity import FigureInputError, MPa, as_given, deg, percent, variation_number

DRIEST_MOISTURE = 6.0  # percent; the relation is not carried below it; Wood Handbook, chapter 5, from memory
REFERENCE_MOISTURE = 12.0  # Wood Handbook, chapter 5
FIVE_PERCENT_QUANTILE = 1.645  # of the normal law; exact
LOWEST_SHARE = 0.25  # of the mean; what a normal law would put below this is not believed; memory
# First-order weights of resistance and load (EN 1990, annex C; from memory).
RESISTANCE_WEIGHT = 0.8
LOAD_WEIGHT = 0.7
# What is at stake: spoiled work, a person in the line of fire, a heavy blank (over 5 kg at over 5 m/s). From memory.
BETA_NUISANCE = 2.0
BETA_PERSON = 3.0
BETA_HEAVY = 4.0
LEAST_TOTAL_FACTOR = 2.0
# Variation that the model itself brings, by grade; from memory.
MODEL_VARIATION = {Grade.CALCULATED: 0.05, Grade.ESTIMATE: 0.20, Grade.ROUGH_GUIDE: 0.45}


@figure(
    title="strength at an angle to the grain",
    symbol="N",
    equation="P·Q/(P·sin²θ + Q·cos²θ)",
    unit="MPa",
    grade=Grade.ESTIMATE,
    sources=("wood-handbook-5",),
    valid="compression, angle 0 to 90°",
    section="0",
    symbols={"parallel": "P", "perpendicular": "Q", "angle": "θ"},
)
def grain_angle_strength(parallel: MPa, perpendicular: MPa, angle: deg) -> float:
    """Compressive strength between along and across the grain (Hankinson form, exponent 2).

    Formula  N = P·Q/(P·sin²θ + Q·cos²θ)
    Inputs   parallel MPa, perpendicular MPa, angle between force and grain in degrees
    Gives    MPa
    Valid    compression; the exponent of published tests is 2 to 2.5, and 2 is the careful end
    Source   Wood Handbook, chapter 5

    >>> round(grain_angle_strength(parallel=54.0, perpendicular=10.1, angle=45), 1)
    17.0
    """
    turned = math.radians(angle)
    return parallel * perpendicular / (parallel * math.sin(turned) ** 2 + perpendicular * math.cos(turned) ** 2)


@figure(
    title="strength at another moisture",
    symbol="P_M",
    equation="P_12·(P_12/P_g)^((12 − M)/(M_p − 12))",
    unit="MPa",
    grade=Grade.ESTIMATE,
    sources=("wood-handbook-5",),
    valid="moisture from 6 %; the green value above the intersection; not for tension across the grain",
    section="0",
    symbols={"dry": "P_12", "green": "P_g", "moisture": "M", "intersection": "M_p"},
)
def moisture_strength(dry: MPa, green: MPa, moisture: percent, intersection: percent = 25.0) -> float:
    """Strength of clear wood at a moisture between dry and green.

    Formula  P_M = P_12·(P_12/P_g)^((12 − M)/(M_p − 12)); P_g from M_p upward
    Inputs   dry MPa (at 12 %), green MPa, moisture percent, intersection percent (21 to 28 by species)
    Gives    MPa
    Valid    moisture from 6 %; not for tension across the grain, which is greatest near 12 %
    Errors   no answer below 6 %; an intersection of 12 % or less is refused
    Source   Wood Handbook, chapter 5

    >>> round(moisture_strength(dry=54.0, green=27.7, moisture=8), 1)
    66.3
    """
    if intersection <= REFERENCE_MOISTURE:
        raise FigureInputError("intersection", intersection, "a moisture above 12 %, 21 to 28 % by species")
    if moisture < DRIEST_MOISTURE:
        raise NoAnswer(f"the moisture relation is not carried below {DRIEST_MOISTURE:g} %")
    if moisture >= intersection:
        return green
    return dry * math.pow(dry / green, (REFERENCE_MOISTURE - moisture) / (intersection - REFERENCE_MOISTURE))


@figure(
    title="lower value, passed by 95 of 100 pieces",
    symbol="x_05",
    equation="x·max(0.25, 1 − 1.645·V)",
    unit="as given",
    grade=Grade.ESTIMATE,
    sources=("wood-handbook-5", "astm-d2555"),
    valid="variation up to 0.45; above it nothing is known well enough to put a person in line",
    section="8",
    symbols={"mean": "x", "variation": "V"},
)
def lower_value(mean: as_given, variation: variation_number) -> float:
    """Lower 5 % value of a strength or a friction from its mean and coefficient of variation.

    Formula  x_05 = x·max(0.25, 1 − 1.645·V)
    Inputs   mean in any unit, variation as a fraction (0.18 for 18 %)
    Gives    the unit of the mean
    Valid    one law for every V: a switch to a log-normal law would make more scatter look safer
    Source   normal distribution; variations from the Wood Handbook, chapter 5, and ASTM D2555

    >>> round(lower_value(mean=1.0, variation=0.25), 3)
    0.589
    """
    return mean * max(LOWEST_SHARE, 1 - FIVE_PERCENT_QUANTILE * variation)


def upper_value(mean: float, variation: float) -> float:
    """Upper 5 % value of a load: mean·(1 + 1.645·V), in the unit of the mean. Source: normal distribution.

    >>> round(upper_value(100.0, 0.3), 1)
    149.3
    """
    return mean * (1 + FIVE_PERCENT_QUANTILE * variation)


def combined_variation(*variations: float) -> float:
    """Coefficient of variation of independent causes together: √ΣV². Source: statistics.

    >>> round(combined_variation(0.3, 0.4), 3)
    0.5
    """
    return math.sqrt(sum(variation**2 for variation in variations))


def design_resistance(mean: float, variation: float, beta: float) -> float:
    """Resistance to design with, R·exp(−0.8·β·V), in the unit of the mean. Source: EN 1990, annex C.

    >>> round(design_resistance(10.0, 0.4, 3.0), 2)
    3.83
    """
    return mean * math.exp(-RESISTANCE_WEIGHT * beta * variation)


def design_load(mean: float, variation: float, beta: float) -> float:
    """Load to design with, S·exp(0.7·β·V), in the unit of the mean. Source: EN 1990, annex C.

    >>> round(design_load(10.0, 0.3, 3.0), 2)
    18.78
    """
    return mean * math.exp(LOAD_WEIGHT * beta * variation)


def total_factor(resistance_variation: float, load_variation: float, beta: float) -> float:
    """Mean resistance over mean load that first-order design asks for, never below 2.

    exp(0.8·β·V_R + 0.7·β·V_S). `beta` is 2 where work may be spoiled, 3 with a person in line, 4 for a heavy blank.
    Use it only where no base and divisor is laid down: those already hold their own scatter.
    Source: EN 1990, annex C.

    >>> round(total_factor(0.4, 0.3, 3.0), 1)
    4.9
    """
    factor = design_load(1.0, load_variation, beta) / design_resistance(1.0, resistance_variation, beta)
    return max(LEAST_TOTAL_FACTOR, factor)
