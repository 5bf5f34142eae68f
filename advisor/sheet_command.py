"""`advisor sheet` and the chart of `advisor speed`: a case in, a file out."""

from __future__ import annotations

import os
from collections.abc import Mapping
from datetime import date
from typing import Any

from advisor.models.case import Case
from advisor.report.output import OutputFault, ending_of, write_whole
from advisor.report.sheet.compose import page_of
from advisor.report.sheet.write import made, sheet_ending, write_sheet

__all__ = ["OutputFault", "check_chart", "check_sheet", "write_answer", "write_chart"]


def check_sheet(path: str | None) -> None:
    """Raises OutputFault for a file that no sheet can be written to, before anything is reckoned."""
    sheet_ending(path)


def write_answer(case: Case, answer: Mapping[str, Any], name: str, units: str, path: str) -> None:
    """The sheet of one answer."""
    now = made(os.environ, date.today())
    write_sheet([page_of(case, answer, name, units, now.date)], path, now.seconds)


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
