"""One file of many: answered, or said what is wrong with it."""

from __future__ import annotations

import json
import os
from collections.abc import Sequence
from pathlib import Path
from typing import Any, NamedTuple

from advisor.models.parts import WHOLE

INPUT, PROGRAM = "input", "program"


class Outcome(NamedTuple):
    """What became of one file: a row for the table and, where asked for, the whole answer; or what was wrong."""

    file: str
    row: dict[str, Any] | None = None
    answer: str | None = None
    error: str | None = None
    fault: str | None = None

    @property
    def line(self) -> str:
        """One line of JSON."""
        name = json.dumps(self.file)
        if self.answer is not None:
            return f'{{"file": {name}, "answer": {self.answer}}}'
        return json.dumps({"file": self.file, "error": self.error, "fault": self.fault})


def case_files(folder: str) -> list[str]:
    """The case files of a folder by name, not those of folders in it. Raises InputFault: no folder, no case in it."""
    from advisor.reading.files import FORMATS
    from advisor.reading.problems import Place, fault

    wanted = "a folder with case files (.yaml, .toml, .json)"
    try:
        names = sorted(os.listdir(folder))
    except (OSError, ValueError) as wrong:
        why = wrong.strerror if isinstance(wrong, OSError) and wrong.strerror else "no folder has such a name"
        raise fault(Place(folder), f"cannot be read as a folder ({why})", wanted) from None
    found = [name for name in names if Path(name).suffix.casefold() in FORMATS and not name.startswith(".")]
    if not found:
        raise fault(Place(folder), "holds no case file", wanted)
    return [str(Path(folder, name)) for name in found]


def exit_code(outcomes: Sequence[Outcome]) -> int:
    """0: every file was answered; 2: input was wrong; 1: the program was at fault somewhere."""
    faults = {outcome.fault for outcome in outcomes}
    return 1 if PROGRAM in faults else 2 if INPUT in faults else 0


def answer_file(path: str, whole: bool) -> Outcome:
    """One file read and answered in this process; whatever goes wrong becomes words."""
    from advisor.quantity import FigureInputError
    from advisor.reading import InputFault, read_case

    try:
        case = read_case(path)
    except InputFault as wrong:
        return Outcome(path, error=str(wrong), fault=INPUT)
    try:
        from advisor.advice.whole import answer_for

        answer = answer_for(case, WHOLE, changes=whole)
        text = json.dumps(answer, allow_nan=False) if whole else None
        return Outcome(path, row=_row(answer), answer=text)
    except FigureInputError as wrong:  # a number that no formula takes
        return Outcome(path, error=f"{path}: {wrong}", fault=INPUT)
    except Exception as wrong:  # one file must not stop the rest
        return Outcome(path, error=f"{path}: {type(wrong).__name__}: {wrong}; no advice was given", fault=PROGRAM)


def _row(answer: dict[str, Any]) -> dict[str, Any]:
    speed, thrust = answer["speed"], answer["thrust"]
    return {
        "verdict": answer["verdict"],
        "hold": answer["holding"][0]["method"],
        "start": speed.get("start_rpm"),
        "ceiling": speed["ceiling_rpm"],
        "governed_by": speed.get("governed_by", ""),
        "window": thrust["window"],
        "set": thrust.get("set_n"),
        "reason": next((reason["text"] for reason in answer["reasons"]), ""),
    }
