"""The parts of docs/ that are made from the program: `python -m tests.house.docs` writes them anew."""

from __future__ import annotations

import argparse
import re
from collections.abc import Iterator

from advisor.models.case import Case
from advisor.models.fields import specs
from advisor.models.section import Section
from advisor.parser import COMMANDS, Parser, build
from tests.house.tree import ROOT

PAGES = {path.name: path for path in sorted((ROOT / "docs").glob("*.md"))}
BLOCK = re.compile(
    r"(?P<head><!-- made from the program: (?P<name>[\w. -]+) -->\n)(?P<body>.*?)(?P<end><!-- end -->)", re.S
)


def _commands() -> dict[str, Parser]:
    actions = (action for action in build()._actions if isinstance(action, argparse._SubParsersAction))
    return dict(next(actions).choices)


def _value(action: argparse.Action) -> str:
    """What follows an option."""
    if action.nargs == 0:
        return ""
    return " " + ("|".join(map(str, action.choices)) if action.choices else str(action.metavar))


def command_block(name: str) -> str:
    """How a command is written, and its options."""
    options = [action for action in _commands()[name]._actions if action.option_strings and action.dest != "help"]
    words = COMMANDS[name].words
    parts = [f"advisor {name}", *([words] if words else [])]
    parts += [f"[{action.option_strings[0]}{_value(action)}]" for action in options]
    rows = [f"* `{action.option_strings[0]}{_value(action)}`: {action.help}" for action in options]
    told = "\n".join(rows) + "\n" if rows else ""
    return (
        f"\n    {' '.join(parts)}\n\n{COMMANDS[name].about[:1].upper()}{COMMANDS[name].about[1:]}.\n\n{told}\n".replace(
            "\n\n\n", "\n\n"
        )
    )


def _sections(model: type[Section], above: str = "") -> Iterator[tuple[str, type[Section]]]:
    yield above, model
    for name, spec in specs(model).items():
        if spec.section is not None:
            yield from _sections(spec.section, f"{above}.{name}".lstrip("."))


SECTIONS = {name or "case": model for name, model in _sections(Case)}


def section_block(name: str) -> str:
    """Every field of a section of a case."""
    model = SECTIONS[name]
    rows = []
    for field, spec in specs(model).items():
        info = model.declared[field]
        about = info.description or (spec.section.__doc__ if spec.section is not None else "") or ""
        mark = " (needed)" if info.required else ""
        accepted = "its own fields, below" if spec.section is not None else spec.accepted
        rows.append(f"| `{field}`{mark} | {about.rstrip('.').replace('|', '/')} | {accepted.replace('|', '/')} |\n")
    return f"\n| field | what it is | what is accepted |\n|---|---|---|\n{''.join(rows)}\n"


def block(name: str) -> str:
    """The text of a block by its name."""
    kind, _, of = name.partition(" ")
    return {"command": command_block, "section": section_block}[kind](of)


def refreshed(text: str) -> str:
    """A page with its blocks made anew."""
    return BLOCK.sub(lambda found: found["head"] + block(found["name"]) + found["end"], text)


def names(text: str) -> list[str]:
    """The blocks of a page."""
    return [found["name"] for found in BLOCK.finditer(text)]


def examples(text: str) -> list[str]:
    """The commands of a page, one a line."""
    return [line for part in re.findall(r"```sh\n(.*?)```", text, re.S) for line in part.splitlines() if line.strip()]


if __name__ == "__main__":
    for path in PAGES.values():
        path.write_text(refreshed(path.read_text(encoding="utf-8")), encoding="utf-8")
