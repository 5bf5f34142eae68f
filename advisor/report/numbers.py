"""Numbers as a person reads them: two figures, limits down, requirements up."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence

from advisor.units import KG_PER_POUND, MM_PER_INCH, NEWTONS_PER_POUND, NM_PER_INCH_POUND, two_figures

IN_INCH = {"mm": (MM_PER_INCH, "in"), "kg": (KG_PER_POUND, "lb"), "N": (NEWTONS_PER_POUND, "lbf")}
_MEASURED = re.compile(rf"([\d.]+)( to ([\d.]+))? ({'|'.join(IN_INCH)})")
FACE_SHIELD_J = 6.2  # high-mass impact test of ANSI Z87.1-2003


def _plain(value: float) -> str:
    """A rounded value without idle decimals, and without rounding it once more."""
    return f"{value:.0f}" if value >= 10 else f"{value:.6g}"


def limit_down(value: float) -> str:
    """A limit, or a margin, to two figures and never above it."""
    return _plain(two_figures(value, False))


def energy(joules: float) -> str:
    """Joules to two figures, up, beside the impact that a face shield is tried with."""
    told = f"{two_figures(joules, True):.3g} J"
    times = joules / FACE_SHIELD_J
    return told if times <= 1 else f"{told} ({two_figures(times, True):.2g} times the face-shield test)"


def force(newtons: float, units: str, up: bool, most: float = math.inf) -> str:
    """A force to two figures: a requirement up, a limit down; never rounded past the limit `most` that it keeps."""
    told = []
    for unit in (1.0, NEWTONS_PER_POUND):
        figure = two_figures(newtons / unit, up)
        if newtons <= most < math.inf:
            figure = min(figure, two_figures(most / unit, False))
        told.append(figure)
    metric, inch = f"{_plain(told[0])} N", f"{_plain(told[1])} lbf"
    return f"{inch} ({metric})" if units == "inch" else f"{metric} ({inch})"


def power(watts: float) -> str:
    """Watts to two figures, up."""
    return f"{_plain(two_figures(watts, True))} W"


def torque(value: float, units: str) -> str:
    """A torque to two figures."""
    if units == "inch":
        return f"{two_figures(value / NM_PER_INCH_POUND, True):g} lbf·in"
    return f"{two_figures(value, True):g} N·m"


def wheel_torque(value: float, units: str) -> str:
    """A torque to wind to and not past, to two figures, down."""
    inch = units == "inch"
    figure = two_figures(value / NM_PER_INCH_POUND if inch else value, False)
    return f"{float(f'{figure:.2g}'):g} {'lbf·in' if inch else 'N·m'}"


def angle(ends: Sequence[float]) -> str:
    """An angle in degrees, or the two ends of its range."""
    return " to ".join(dict.fromkeys(f"{end:.0f}" for end in ends)) + "°"


def length(millimeters: float, units: str) -> str:
    """A length to what a rule or a caliper shows."""
    if units == "inch":
        inches = millimeters / MM_PER_INCH
        return f"{inches:.2g} in" if inches < 1 else f"{inches:.1f} in"
    return f"{millimeters:.1f} mm" if millimeters < 10 else f"{millimeters:.0f} mm"


def fine_length(millimeters: float, units: str) -> str:
    """A feed, a depth of cut, a nose radius."""
    return f"{millimeters / MM_PER_INCH:.2g} in" if units == "inch" else f"{millimeters:.3g} mm"


def surface_speed(meters: float, units: str) -> str:
    """A cutting speed, down, in m/min or ft/min."""
    return f"{two_figures(meters / 0.3048, False):.0f} ft/min" if units == "inch" else f"{meters:.3g} m/min"


def assumed_value(text: str, units: str) -> str:
    """What was taken for a field nobody filled in: a length, mass or force in the units that are printed."""
    found = _MEASURED.fullmatch(text)
    if units != "inch" or found is None:
        return text
    factor, unit = IN_INCH[found[4]]
    ends = " to ".join(f"{float(f'{float(end) / factor:.3g}'):g}" for end in (found[1], found[3]) if end)
    return f"{ends} {unit}"
