"""One process that answers questions: a line of JSON in, a line of JSON out, until its input ends.

It lives apart from the page so that whatever ends it, the page stays and another takes its place.
"""

from __future__ import annotations

import json
import os
import signal
import sys
from collections.abc import Callable, Mapping
from typing import Any

from advisor.models.parts import WHOLE


def _read(task: Mapping[str, Any]) -> Any:
    from advisor.reading import read_case, read_text

    if "text" in task:
        return read_text(task["text"], "json", "the case")
    return read_case(None, task["words"])


def _answer(task: Mapping[str, Any]) -> dict[str, Any]:
    """The answer to a case, with what a page needs to head it."""
    case = _read(task)
    from advisor.advice.whole import answer_for

    answer = answer_for(case, task.get("parts", WHOLE))
    return {
        "answer": answer,
        "title": case.heading,
        "units": case.units or "metric",
        "opens": _opens(answer),
        "worked": _worked(answer),
    }


def _opens(answer: Mapping[str, Any]) -> list[str]:
    """The fields that would change a reason of the verdict, as its rule names them."""
    from advisor.rulebook import load_book

    reasons = {entry["rule"] for entry in answer["reasons"]}
    rules = (rule for rule in load_book(checked=False).rules if rule.name in reasons)
    return list(dict.fromkeys(name for rule in rules for name in rule.opens))


def _worked(answer: Mapping[str, Any]) -> dict[str, dict[str, str]]:
    """How the energy and the speed of the rim at the start were worked out."""
    speed = answer.get("speed", {})
    if not speed.get("start_rpm") or not speed["ladder"]:
        return {}
    from advisor.physics.rim import rim_speed, spinning_energy

    turning = {"diameter": speed["ladder"][0]["diameter_mm"], "rpm": speed["start_rpm"]}
    figures = {
        "energy": spinning_energy.figure(mass=speed["balance"]["mass_kg"], **turning),
        "rim": rim_speed.figure(**turning),
    }
    return {
        name: {"formula": entry.worked, "grade": str(entry.grade), "source": "; ".join(entry.as_dict()["sources"])}
        for name, entry in figures.items()
    }


def _case(task: Mapping[str, Any]) -> dict[str, Any]:
    """The case as a file that reads back to it."""
    from advisor.reading import write_case

    return {"yaml": write_case(_read(task))}


def _sheet(task: Mapping[str, Any]) -> dict[str, Any]:
    """The sheet to pin up, as the file of an ending in base 64."""
    from base64 import b64encode
    from datetime import date

    found, case = _answer(task), _read(task)
    from advisor.report.sheet.compose import page_of
    from advisor.report.sheet.write import content_of, day_of_making

    made = day_of_making(os.environ, date.today())
    page = page_of(case, found["answer"], found["title"], found["units"], made.isoformat())
    content = content_of(task["ending"], [page], made)
    return {"base64": b64encode(content if isinstance(content, bytes) else content.encode()).decode()}


def _explain(task: Mapping[str, Any]) -> dict[str, Any]:
    """The page of one name, or that nothing is called that."""
    from advisor.quantity import FigureInputError
    from advisor.report.explain import explain

    try:
        return {"text": explain(task["name"])[1]}
    except FigureInputError as fault:
        return {"unknown": str(fault)}


TASKS: dict[str, Callable[[Mapping[str, Any]], dict[str, Any]]] = {
    "answer": _answer,
    "case": _case,
    "sheet": _sheet,
    "explain": _explain,
}


def do(task: Mapping[str, Any]) -> dict[str, Any]:
    """One task done: its result, `problems` with the input, or `fault` of the program; never an exception."""
    from advisor.quantity import FigureInputError
    from advisor.reading import InputFault
    from advisor.reading.problems import Problem

    try:
        return TASKS[task["do"]](task)
    except InputFault as fault:
        return {"problems": [problem._asdict() for problem in fault.problems]}
    except FigureInputError as fault:  # a number that no formula takes
        return {"problems": [Problem(None, None, None, "", None, str(fault))._asdict()]}
    except Exception as fault:  # one bad question must not take the next one with it
        return {"fault": f"{type(fault).__name__}: {fault}"}


def main() -> None:
    """Answer until the input ends. Ctrl-C is for the page: it ends its workers itself."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    answers = os.fdopen(os.dup(sys.stdout.fileno()), "w", encoding="utf-8")
    os.dup2(sys.stderr.fileno(), sys.stdout.fileno())  # whatever prints must not print among the answers
    for line in sys.stdin:
        answers.write(json.dumps(do(json.loads(line)), allow_nan=False) + "\n")
        answers.flush()


if __name__ == "__main__":
    main()
