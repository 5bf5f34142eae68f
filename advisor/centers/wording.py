"""Lengths as a machinist reads them: four places of inches, three of millimeters."""

from __future__ import annotations

from advisor.units import MM_PER_INCH, System


def length(mm: float, system: System) -> str:
    """A length with its unit, to a tenth of a thousandth of an inch or a micron."""
    return f"{place(mm, system)} {'in' if system is System.INCH else 'mm'}"


def about(mm: float, system: System) -> str:
    """A length that need not be true to more than a thousandth of an inch or a hundredth of a millimeter."""
    inch = system is System.INCH
    value, digits = (mm / MM_PER_INCH, 3) if inch else (mm, 2)
    return f"{value:.{digits}f}".rstrip("0").rstrip(".") + (" in" if inch else " mm")


def two_figures(value: float) -> str:
    """A number to two figures, for what is no better known."""
    return f"{float(f'{value:.2g}'):g}"


def place(mm: float, system: System) -> str:
    """A place on the readout, without its unit; never `-0`."""
    value, digits = (mm / MM_PER_INCH, 4) if system is System.INCH else (mm, 3)
    text = f"{value:.{digits}f}"
    return text.removeprefix("-") if float(text) == 0 else text


def small_step(system: System) -> float:
    """The least step a shop talks about: a thousandth of an inch, or two hundredths of a millimeter (mm)."""
    return 0.001 * MM_PER_INCH if system is System.INCH else 0.02


def angle(degrees: float | None) -> str:
    return "none" if degrees is None else f"{degrees:.1f} deg"
