"""The command: words in, advice out. Everything heavy is imported by the command that needs it."""

from __future__ import annotations

import argparse
import gc
import io
import os
import sys
from collections.abc import Sequence
from contextlib import suppress
from typing import Any, NoReturn, TextIO

from advisor import parser

ANSWER_PARTS = {  # the whole stands in models too: nothing is imported here before a command needs it
    "advise": ("holding", "speed", "thrust", "centers", "tool"),
    "mount": (),
    "hold": ("holding", "proportions"),
    "speed": ("speed",),
    "thrust": ("thrust", "centers"),
}


def _split_case(words: Sequence[str]) -> tuple[str | None, list[str]]:
    """The case file, if one was named, and the field=value words."""
    from advisor.reading import InputFault, Problem

    files = [word for word in words if "=" not in word]
    if len(files) > 1:
        accepted = "one case file and any number of field=value words"
        raise InputFault([Problem(None, None, None, "", files[1], "a second case file was named", accepted, None)])
    return (files[0] if files else None), [word for word in words if "=" in word]


def _answer(options: argparse.Namespace) -> int:
    gc.disable()  # one answer leaves little behind, and looking for it takes a fifth of the time
    try:
        return _answer_once(options)
    finally:
        gc.enable()


def _answer_once(options: argparse.Namespace) -> int:
    from advisor.reading import read_case

    chart = getattr(options, "output", None)
    if chart is not None:
        from advisor import sheet_command

        sheet_command.check_chart(chart)
    if getattr(options, "seed", None) is not None and not options.spread:
        raise UserFault("--seed goes with --spread")
    path, words = _split_case(options.words)
    case = read_case(path, words, sys.stdin)
    from advisor.advice.whole import answer_for

    spread = getattr(options, "spread", False)
    answer = _spread(case, options) if spread else answer_for(case, ANSWER_PARTS[options.command])
    if chart is not None:
        sheet_command.write_chart(answer, case.heading, chart)
    if options.json:
        return _print_json(answer)
    from advisor.report.screen import show

    units = options.units or case.units or "metric"
    show(answer, case.heading, units, sys.stdout, plain=options.plain, holds=options.command == "hold")
    return 0


def _spread(case: Any, options: argparse.Namespace) -> Any:
    """The answer with the range of its limits; a bar on standard error while the jobs are drawn."""
    from advisor.advice.spread import SAMPLES, SEED, answer_with_spread
    from advisor.report.progress import progress

    seed = SEED if options.seed is None else options.seed
    with progress("draws", SAMPLES, options.plain) as done:
        return answer_with_spread(case, ANSWER_PARTS[options.command], SAMPLES, seed, done)


def _plan(options: argparse.Namespace) -> int:
    from advisor.planning import JobUnclear, plan_answer
    from advisor.reading import read_case
    from advisor.report.plan import plan_lines
    from advisor.report.screen import write

    path, words = _split_case(options.words)
    case = read_case(path, words, sys.stdin)
    try:
        answer = plan_answer(case)
    except JobUnclear as fault:
        raise UserFault(str(fault)) from None
    if options.json:
        return _print_json(answer)
    lines = plan_lines(answer, case.heading, options.units or case.units or "metric")
    write(lines, sys.stdout, plain=options.plain)
    return 0


def _sheet(options: argparse.Namespace) -> int:
    from advisor import sheet_command
    from advisor.reading import read_case

    sheet_command.check_sheet(options.output)
    path, words = _split_case(options.words)
    case = read_case(path, words, sys.stdin)
    write = sheet_command.write_plan if options.plan else sheet_command.write_answer
    units = options.units or case.units or "metric"
    answer = write(case, ANSWER_PARTS["advise"], case.heading, units, options.output)
    if options.json:
        return _print_json(answer)
    sys.stdout.write(f"{options.output}: written\n")
    return 0


def _print_json(document: Any) -> int:
    import json

    plain = str(sys.stdout.encoding or "").lower() not in ("utf-8", "utf8", "")  # escapes say the same document there
    sys.stdout.write(json.dumps(document, ensure_ascii=plain, allow_nan=False, indent=2) + "\n")
    return 0


def _pairs(words: Sequence[str]) -> dict[str, str]:
    found: dict[str, str] = {}
    for word in words:
        key, sign, value = word.partition("=")
        if not sign:
            raise UserFault(f"{word!r} is not key=value")
        if key in found:
            raise UserFault(f"{key} was given twice")
        found[key] = value
    return found


class UserFault(Exception):  # noqa: N818 -- the house says fault for what a user did wrong
    """The words make no sense; the message says what is accepted."""


def _center(options: argparse.Namespace) -> int:
    from advisor import center_command
    from advisor.units import System

    pairs = _pairs(options.words)
    units = System.INCH if options.units != "metric" else System.METRIC
    made = center_command.center_make(pairs, units) if options.make else center_command.center_answer(pairs, units)
    if options.output:
        made.draw(options.output)
    if options.json:
        return _print_json(made.as_dict())
    sys.stdout.write("\n".join(made.text) + "\n")
    return 0


def _reckon(options: argparse.Namespace) -> int:
    from advisor.figure import reckon

    if not options.words:
        raise UserFault("reckon needs the name of a figure; `advisor list figures` prints them")
    figure = reckon(options.words[0], _pairs(options.words[1:]))
    if options.json:
        return _print_json(figure.as_dict())
    from advisor.report.listing import figure_lines

    sys.stdout.write("\n".join(figure_lines(figure)) + "\n")
    return 0


def _explain(options: argparse.Namespace) -> int:
    from advisor.report.explain import explain

    if len(options.words) != 1:
        raise UserFault("explain needs one name: a rule, figure, limit, method, material or wood")
    name, text = explain(options.words[0])
    if options.json:
        return _print_json({"name": name, "text": text})
    sys.stdout.write(text.rstrip() + "\n")
    return 0


def _list(options: argparse.Namespace) -> int:
    from advisor.report.listing import entries, source_lines, table_lines

    if len(options.words) != 1 or options.words[0] not in parser.LIST_KINDS:
        raise UserFault(f"list needs one of: {', '.join(parser.LIST_KINDS)}")
    found = entries(options.words[0])
    if options.json:
        return _print_json(found)
    lines = source_lines if options.words[0] == "sources" else table_lines
    sys.stdout.write("\n".join(lines(found)) + "\n")
    return 0


def _serve(options: argparse.Namespace) -> int:
    from advisor.web.serve import PortFault, serve

    try:
        return serve(options.port, sys.stdout)
    except PortFault as fault:
        raise UserFault(str(fault)) from None


def _schema(options: argparse.Namespace) -> int:
    from advisor.report.schema import schemas

    wanted = options.words[0] if options.words else None
    found = schemas()
    if wanted is not None and wanted not in found:
        raise UserFault(f"schema takes one of: {', '.join(found)}")
    return _print_json(found[wanted] if wanted is not None else found)


def _batch(options: argparse.Namespace) -> int:
    from advisor.batch import command

    if len(options.words) != 1:
        raise UserFault("batch needs one folder with case files")
    return command.run(
        options.words[0],
        options.jobs,
        as_json=options.json,
        plain=options.plain,
        units=options.units or "metric",
        out=sys.stdout,
        errors=sys.stderr,
    )


def _ask(options: argparse.Namespace) -> int:
    from advisor.ask.command import run

    return run(options.words, options.output, plain=options.plain, units=options.units)


def _compare(options: argparse.Namespace) -> int:
    from advisor.compare import run

    return run(options.words, as_json=options.json, plain=options.plain, units=options.units, out=sys.stdout)


def _completion(options: argparse.Namespace) -> int:
    if options.words != ["bash"]:
        raise UserFault(f"completion needs the name of a shell: {', '.join(parser.SHELLS)}")
    from advisor.completion import bash

    sys.stdout.write(bash())
    return 0


RUN = {
    **dict.fromkeys(ANSWER_PARTS, _answer),
    "plan": _plan,
    "sheet": _sheet,
    "compare": _compare,
    "ask": _ask,
    "batch": _batch,
    "center": _center,
    "reckon": _reckon,
    "explain": _explain,
    "list": _list,
    "schema": _schema,
    "completion": _completion,
    "serve": _serve,
}


def _faults() -> tuple[type[Exception], ...]:
    """What a user can do wrong, as exceptions; each message says field, value and what is accepted."""
    from advisor.centers.inputs import CenterInputError
    from advisor.quantity import FigureInputError
    from advisor.reading import InputFault
    from advisor.report.output import OutputFault
    from advisor.units import UnitError

    return (UserFault, InputFault, OutputFault, FigureInputError, UnitError, CenterInputError)


def _open_closed_streams() -> None:
    """A standard stream that was closed before the start is None to Python: from here on it is an empty one."""
    for name, mode in (("stdin", "r"), ("stdout", "w"), ("stderr", "w")):
        if getattr(sys, name) is None:
            setattr(sys, name, open(os.devnull, mode, encoding="utf-8"))  # noqa: SIM115 -- open to the end


def _drop_output() -> None:
    """What could not be written is not tried again when the process ends."""
    with suppress(io.UnsupportedOperation):  # a stream without a file below it
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def main(arguments: Sequence[str] | None = None, errors: TextIO | None = None) -> int:
    """Run one command. Exit code 0: an answer; 2: the input is wrong; 1: a fault of the program or of the system."""
    _open_closed_streams()
    errors = errors if errors is not None else sys.stderr
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")  # a terminal without the signs still gets the answer
    options = parser.parse(sys.argv[1:] if arguments is None else arguments)
    if options.command is None:
        parser.build().print_help()
        return 2
    try:
        status = RUN[options.command](options)
        sys.stdout.flush()
        return status
    except BrokenPipeError:
        _drop_output()
        return 0
    except KeyboardInterrupt:
        errors.write("stopped\n")
        return 130
    except Exception as fault:
        if isinstance(fault, _faults()):
            errors.write(f"{fault}\n")
            return 2
        if os.environ.get("ADVISOR_DEBUG"):
            raise
        if isinstance(fault, OSError):
            _drop_output()
            errors.write(f"advisor: the system would not read or write ({fault}); the answer is not whole\n")
            return 1
        errors.write(f"advisor: a fault of the program ({type(fault).__name__}: {fault}); no advice was given\n")
        return 1


def command() -> NoReturn:
    """A process that runs one command and ends."""
    status = main()
    gc.freeze()  # the end of the process frees everything anyway
    sys.exit(status)


if __name__ == "__main__":
    command()
