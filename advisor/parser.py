"""Every command with its words, options and example: `--help`, completion and documentation are made from this."""

import argparse
import os
from collections.abc import Sequence
from typing import Any, NamedTuple, NoReturn

from advisor import __version__

MOST_JOBS = 64
LIST_KINDS = ("species", "materials", "methods", "rules", "figures", "sources")
SHELLS = ("bash",)
CASE = "CASE or field=value"


class Command(NamedTuple):
    """A command: what it does, what its words are, an example that works, and the options it shares with others."""

    about: str
    words: str | None
    example: str
    options: tuple[str, ...] = ("json", "plain", "units")


COMMANDS = {
    "advise": Command(
        "the whole answer: may it be mounted, what holds it, how fast, how hard the tailstock presses",
        CASE,
        "advisor advise cases/maple-spindle.yaml",
    ),
    "mount": Command(
        "may this be mounted at all",
        CASE,
        "advisor mount work.material=cocobolo 'work.diameter=2 in' work.length=6in person.asthma=yes",
    ),
    "hold": Command(
        "ways of holding, ranked, with margins",
        CASE,
        "advisor hold work.material=ash 'work.diameter=10 in' work.length=3in work.form=disc",
    ),
    "speed": Command(
        "starting speed, ceiling, every limit behind it",
        CASE,
        "advisor speed work.material=ash 'work.diameter=10 in' work.length=3in work.form=disc",
    ),
    "thrust": Command(
        "tailstock window: needed, allowed, what to set",
        CASE,
        "advisor thrust work.material=beech work.diameter=25mm work.length=600mm work.form=round",
    ),
    "plan": Command(
        "the job stage by stage: each hold, each speed, each check", CASE, "advisor plan cases/green-ash-bowl-plan.yaml"
    ),
    "sheet": Command(
        "one page to pin up by the lathe, as PDF, HTML or SVG",
        CASE,
        "advisor sheet cases/maple-spindle.yaml -o sheet.pdf",
    ),
    "compare": Command(
        "two situations: what differs, and what makes the difference",
        "A B or A field=value",
        "advisor compare cases/maple-spindle.yaml work.moisture=wet machine.max_rpm=900",
    ),
    "ask": Command(
        "an interview at the keyboard that ends in a case file and an answer",
        CASE,
        "advisor ask work.material=ash -o case.yaml",
        ("plain", "units"),
    ),
    "batch": Command("every case in a folder, several at once, as a table", "FOLDER", "advisor batch cases"),
    "center": Command(
        "geometry and machining schedule of a shop-made toothed drive center",
        "key=value",
        "advisor center diameter=1in hole=0.251in cutter=1/2in depth=0.200in land=0.005in",
    ),
    "reckon": Command(
        "one figure: value, formula with the numbers in it, grade, source",
        "FIGURE key=value",
        "advisor reckon buckling-force diameter=25mm length=900mm modulus=12.6GPa",
    ),
    "explain": Command(
        "a rule, figure, limit, method or material in plain words", "NAME", "advisor explain cracked-through"
    ),
    "list": Command(f"what there is: {', '.join(LIST_KINDS)}", "KIND", "advisor list species"),
    "schema": Command("JSON Schema of a case and of an answer", "case|answer", "advisor schema"),
    "completion": Command(
        "a script that completes commands, fields and words in bash", "bash", "advisor completion bash", ()
    ),
    "serve": Command("a page on this machine only (127.0.0.1), until Ctrl-C", None, "advisor serve --port 8321", ()),
}
OUTPUT = {
    "speed": "the limits as a chart: a name ending in .svg",
    "sheet": "where to write it: a name ending in .html, .pdf or .svg",
    "center": "a drawing: .svg or .dxf",
    "ask": "the new case file, ending in .yaml; asked for when not given",
}
SHOWN: dict[str, dict[str, Any]] = {
    "json": {"action": "store_true", "help": "one JSON document and nothing else"},
    "plain": {"action": "store_true", "help": "no color, no terminal tricks"},
    "units": {"choices": ("metric", "inch"), "help": "what is printed; input takes either"},
}


class Parser(argparse.ArgumentParser):
    """Says what is wrong in one line and ends with exit code 2."""

    def _get_formatter(self) -> argparse.HelpFormatter:
        return argparse.HelpFormatter(self.prog, width=_columns() - 2)  # without a width it imports three compressors

    def error(self, message: str) -> NoReturn:
        self.exit(2, f"{self.prog}: {message}\ntry: {self.prog} --help\n")


def parse(words: Sequence[str]) -> argparse.Namespace:
    """The command in these words with its options; `command` is its name. Ends the process where they make no sense.

    Where the first word is a command only its own options are made: making those of all takes a tenth of an answer.
    """
    name = words[0] if words else ""
    if name not in COMMANDS:
        return build().parse_args(words)
    one = Parser(prog=f"advisor {name}", **_told(name))
    _take_words_and_options(one, name)
    parse = one.parse_args if "--" in words else one.parse_intermixed_args  # which forgets what `--` was for
    return parse(words[1:], argparse.Namespace(command=name))


def build() -> Parser:
    """The parser of all commands, for those who ask what there is; `command` is the name of the one that was chosen."""
    parser = Parser(
        prog="advisor",
        description="Advice beside the lathe. It defers to local codes and licensed practice.",
        epilog=f"example: {COMMANDS['advise'].example}",
    )
    parser.add_argument("--version", action="version", version=f"advisor {__version__}")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", parser_class=Parser)
    for name, command in COMMANDS.items():
        _take_words_and_options(commands.add_parser(name, help=command.about, **_told(name)), name)
    return parser


def _told(name: str) -> dict[str, Any]:
    """What `--help` says around the options of a command."""
    return {"description": COMMANDS[name].about, "epilog": f"example: {COMMANDS[name].example}"}


def _take_words_and_options(one: Parser, name: str) -> None:
    command = COMMANDS[name]
    if command.words is not None:
        told = "a .yaml, .toml or .json file, -, words" if command.words == CASE else None
        one.add_argument("words", nargs="*", metavar=command.words, help=told)
    for option in command.options:
        one.add_argument(f"--{option}", **SHOWN[option])
    if name in OUTPUT:
        one.add_argument("-o", dest="output", metavar="FILE", help=OUTPUT[name])
    _own_options(one, name)


def _columns() -> int:
    """The width of the terminal: what COLUMNS says, else what the terminal says, else 80."""
    told = os.environ.get("COLUMNS", "")
    if told.isascii() and told.isdecimal() and int(told[:6]) > 0:
        return int(told[:6])
    try:
        return os.get_terminal_size(1).columns or 80
    except OSError:
        return 80


def _own_options(one: Parser, name: str) -> None:
    """What one command alone takes."""
    if name == "center":
        one.add_argument("--make", action="store_true", help="the whole shop plan for drive and tail center")
    elif name == "sheet":
        one.add_argument("--plan", action="store_true", help="the whole job, a page for each stage")
    elif name == "speed":
        one.add_argument("--spread", action="store_true", help="how far each limit ranges, and what moves it most")
        one.add_argument("--seed", type=_seed, metavar="N", help="with --spread: which draws; 1 unless named")
    elif name == "batch":
        about = "processes at once; one for each processor when not given"
        one.add_argument("--jobs", type=_jobs, metavar="N", help=about)
    elif name == "serve":
        about = "8321 unless named; 0 takes any that is free"
        one.add_argument("--port", type=_port, default=8321, metavar="N", help=about)


def _port(text: str) -> int:
    if not (text.isascii() and text.isdecimal()) or len(text) > 5 or int(text) > 65535:
        raise argparse.ArgumentTypeError(f"{text!r} is no port: a whole number from 0 to 65535")
    return int(text)


def _seed(text: str) -> int:
    if not (text.isascii() and text.isdecimal() and len(text) <= 9):
        raise argparse.ArgumentTypeError(f"{text[:20]!r} is no seed: a whole number from 0 to 999999999")
    return int(text)


def _jobs(text: str) -> int:
    if not (text.isascii() and text.isdigit() and len(text) <= 4 and 1 <= int(text) <= MOST_JOBS):
        raise argparse.ArgumentTypeError(f"{text[:20]!r} is not a whole number from 1 to {MOST_JOBS}")
    return int(text)
