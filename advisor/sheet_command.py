"""`advisor sheet` and the chart of `advisor speed`: a case in, a file out."""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any

from advisor.models.case import Case
from advisor.report.output import OutputFault, ending_of, write_whole
from advisor.report.sheet.compose import page_of
from advisor.report.sheet.write import day_of_making, sheet_ending, write_sheet

__all__ = ["OutputFault", "check_chart", "check_sheet", "write_answer", "write_chart", "write_plan"]


def check_sheet(path: str | None) -> None:
    """Raises OutputFault for a file that no sheet can be written to, before anything is reckoned."""
    sheet_ending(path)


def write_answer(case: Case, parts: Sequence[str], name: str, units: str, path: str) -> dict[str, Any]:
    """The sheet of one case; gives the answer it shows."""
    from advisor.advice.whole import answer_for

    made = day_of_making(os.environ, date.today())
    answer = answer_for(case, parts)
    write_sheet([page_of(case, answer, name, units, made.isoformat())], path, made)
    return answer


def write_plan(case: Case, _parts: Sequence[str], name: str, units: str, path: str) -> dict[str, Any]:
    """The sheet of a whole job, a page for each stage; gives the answer it shows. OutputFault: no known job."""
    from advisor.planning import JobUnclear, walk
    from advisor.planning.answer import compose
    from advisor.report.sheet.stages import stage_pages

    made = day_of_making(os.environ, date.today())
    try:
        plan = walk(case)
    except JobUnclear as fault:
        raise OutputFault(str(fault)) from None
    answer = compose(plan)
    write_sheet(stage_pages(plan, answer, name, units, made.isoformat()), path, made)
    return answer


def check_chart(path: str) -> None:
    """Raises OutputFault for a file that no chart can be written to."""
    ending_of(path, (".svg",), "speed")


def write_chart(answer: Mapping[str, Any], name: str, path: str) -> None:
    """The chart of the limits on speed. Raises OutputFault where there is no limit to show."""
    from advisor.drawing.limits_chart import limits_chart
    from advisor.report.sheet.clean import clean
    from advisor.report.words import HEADLINE

    check_chart(path)
    speed = answer["speed"]
    if not speed["limits"]:
        raise OutputFault(f"-o {path}: no limit on the speed could be worked out, so there is no chart to write")
    title = f"{HEADLINE[answer['verdict']]} {clean(name)}"
    write_whole(path, limits_chart(speed["limits"], title, speed.get("start_rpm")))
