"""Builds the job of a test from plain sections of a case."""

from __future__ import annotations

from typing import Any

from advisor.reckoning.holds import HoldFigures, hold_figures
from advisor.situation import Situation, settle
from tests.models.twin import validated

Section = dict[str, Any]

BOWL: Section = {
    "material": "sugar maple",
    "form": "disc",
    "grain": "across",
    "state": "round",
    "moisture": 12.0,
    "purpose": "bowl",
    "diameter": 254.0,
    "length": 100.0,
}
ROD: Section = {
    "material": "sugar maple",
    "form": "round",
    "grain": "along",
    "state": "round",
    "moisture": 12.0,
    "diameter": 40.0,
    "length": 100.0,
}
START_RPM = 500.0


def job(work: Section, hold: Section | None = None, cut: Section | None = None, **machine: Any) -> Situation:
    """One settled job: the work given, everything else as said or silent."""
    sections = {"work": work, "hold": hold or {}, "cut": cut or {}, "machine": machine}
    return settle(validated(sections))


def judged(
    method: str, work: Section, hold: Section | None = None, cut: Section | None = None, **machine: Any
) -> HoldFigures:
    """The figures of one method on such a job at the starting speed."""
    return hold_figures(job(work, hold, cut, **machine), method, START_RPM)


def ratios(figures: HoldFigures) -> tuple[float, float]:
    """Low and typical ratio of a method that has a model."""
    assert figures.low is not None
    assert figures.typical is not None
    return figures.low, figures.typical


def divided(figures: HoldFigures) -> float:
    """Typical ratio over the divisor."""
    assert figures.divided is not None
    return figures.divided
