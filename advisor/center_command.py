"""`advisor center` as the command line calls it: pairs in, an answer that shows itself out."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any, NamedTuple

from advisor.centers.answer import Answer, answer
from advisor.centers.inputs import CenterInputError, read_wanted
from advisor.centers.make import Plan, plan
from advisor.centers.make_inputs import read_making
from advisor.units import System

__all__ = ["CenterAnswer", "CenterInputError", "CenterPlan", "center_answer", "center_make"]


class CenterAnswer(NamedTuple):
    """One answer: for a script, for a terminal, and as a drawing."""

    answer: Answer

    def as_dict(self) -> dict[str, Any]:
        """The JSON answer."""
        return self.answer.as_dict()

    @property
    def text(self) -> list[str]:
        """The answer as plain lines."""
        from advisor.centers.text import lines

        return lines(self.answer)

    def draw(self, path: str | Path) -> None:
        """Write the drawing. The ending says which kind; raises CenterInputError for any but .svg and .dxf."""
        from advisor.drawing.center_sheet import write_drawing

        ending = Path(path).suffix.lower()
        if ending not in (".svg", ".dxf"):
            raise CenterInputError(
                "-o", str(path), "is no kind of drawing that can be written", "a name ending in .svg or .dxf"
            )
        write_drawing(self.answer, Path(path))


def center_answer(pairs: Mapping[str, str], units: System = System.INCH) -> CenterAnswer:
    """Answer key=value pairs. `units` is the system of what is printed; every value says its own unit.

    Raises CenterInputError naming the field, what was given and what is accepted.
    """
    return CenterAnswer(answer(read_wanted(pairs, units)))


class CenterPlan(NamedTuple):
    """The shop plan: for a script, for a terminal, and as the drawing of its center."""

    plan: Plan

    def as_dict(self) -> dict[str, Any]:
        """The JSON answer; the center itself stands under `center`."""
        return self.plan.as_dict()

    @property
    def text(self) -> list[str]:
        """The plan as plain lines."""
        return self.plan.lines()

    def draw(self, path: str | Path) -> None:
        """Write the drawing of the center, as `CenterAnswer.draw` does."""
        CenterAnswer(self.plan.answer).draw(path)


def center_make(pairs: Mapping[str, str], units: System = System.INCH) -> CenterPlan:
    """The shop plan for the pairs of `center_answer` and those of `make_inputs` (metal, shank, point, lathe, tail ...).

    Raises CenterInputError as `center_answer` does.
    """
    return CenterPlan(plan(read_making(pairs, units)))
