"""docs/models.md, made by running the comparisons: `python -m tests.house.models` writes it anew."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterable, Iterator, Mapping
from typing import NamedTuple

from advisor.figure import Formula, all_figures, reckon
from tests.house.published import PUBLISHED, share
from tests.house.tree import ROOT

PAGE = ROOT / "docs" / "models.md"
CHECKS = ROOT / "tests" / "validation" / "check_values.csv"
ARITHMETIC = "formula only"
HEAD = """# The models: how far each can be trusted

Made by running the comparisons (`python -m tests.house.models`); a test keeps it so. `advisor list figures` names the
figures, `advisor reckon FIGURE` works one out with its formula, `advisor list sources` says what is taken from where.

*Calculated* means exact mechanics: the error is that of what is put in. *Estimate*: an accepted model, about 30 %
either way on top of the scatter of the material. *Rough guide*: right within a factor of two; try it by hand first.
*Practice*: what the trade does.

A small difference says that the arithmetic is that of the model, found by another route. It says nothing of constants
from memory, of which there are many. For what is a rough guide no test of the real thing was found, but for the
cleavage of green wood.

Nowhere modeled: chatter and the dynamics of the tool, the dynamics of a catch, hidden ring shakes, checks that open
while the piece is mounted, resonance of the stand, steered twist of the grain, a chuck that unscrews under an electric
brake.
"""


class Model(NamedTuple):
    """A group of figures by their section: its title and what it leaves out."""

    title: str
    leaves_out: str


MODELS: dict[str, Model] = {
    "0": Model("Grain angle and moisture", "size, temperature, moisture below 6 %, tension across the grain"),
    "1.1": Model("Teeth pressed into end grain", "checks in the slot, teeth shorter than 3 mm; no slip test was found"),
    "1.2": Model("Ring and cup drives", "a face that is not flat, a ring that has cut in unevenly"),
    "1.3": Model("Cones and points as drives", "a cone that wanders, an end that is not square"),
    "1.4": Model("Tapers in the spindle", "oil, nicks, a shank that does not fit its socket"),
    "1.5": Model("Thrust that the drive needs", "shock; a dead center that runs dry and chars"),
    "2.1": Model("Crushing of the ends", "creep over hours, wet ends that swell"),
    "2.2": Model("Opening force of cones and wedges", "a point not sunk to its flank, a hole off its line"),
    "2.3": Model("Splitting of an end", "hidden checks, interlocked grain, side grain; what is no wood"),
    "2.4": Model("Buckling", "a bar that is bowed (a larger divisor stands for it), ends that turn stiffly"),
    "2.5": Model("Handwheel to thrust", "the screw's wear and its oil: ask for a slip test or a scale"),
    "3": Model("Deflection and whirling", "damping, the play of the headstock, wood that is stiffer on one side"),
    "4.1": Model("Offset of the mass", "uneven density that nobody saw; outlines with notches between the radii"),
    "4.2": Model("Force of the unbalance", "a blank that gives"),
    "4.3": Model("Balance grades", "the standard is for rotors in their own bearings: a yardstick, never a limit"),
    "4.4": Model("The lathe on its floor", "resonance but for one factor, anchors, a soft floor, a bench"),
    "4.6": Model("Counterweights", "couples, but that the program shows them"),
    "4.7": Model("Rim speed and energy", "how a piece breaks up, where it flies"),
    "4.8": Model("Bursting and cracks", "wood as it is, stiffer one way; cracks inside; stress from drying"),
    "5.1": Model("Jaws on the outside", "jaws that rock, a tenon that is not round, creep under the jaws"),
    "5.2": Model("Jaws in a recess", "the floor under the recess, but for a depth of twice its own"),
    "5.3": Model("Jaws at speed", "the mass of the jaws is that of an ordinary chuck"),
    "5.4": Model("Collets", "a collet that does not close evenly"),
    "5.5": Model("Screws", "threads stripped by overdriving, splits between screws, end grain (codes give it nothing)"),
    "5.7": Model("Glue and tape", "how well it was glued: the low end is a shop's"),
    "5.8": Model("Jam fits", "moisture, which moves the bore by more than the fit within the hour"),
    "5.9": Model("Suction", "leaks through end grain: read the gauge with the work on"),
    "5.11": Model("Drying", "wood that was not quartered or flat as it was taken, collapse, checks"),
    "6.1": Model("Cutting force in wood", "all but depth, gravity, grain, rake and moisture; no coefficient was read"),
    "6.2": Model("Cutting force in plastics", "speed and heat; levels from memory"),
    "6.3": Model("Power and feed", "losses of the drive"),
    "7": Model("Speeds of the surface, warm parts", "the grade of the steel; a part that is warm on one side"),
    "8": Model("Scatter", "laws other than the normal one; scatter of woods guessed by color"),
}


def _rows() -> dict[str, list[dict[str, str]]]:
    found: dict[str, list[dict[str, str]]] = {}
    with CHECKS.open(encoding="utf-8", newline="") as lines:
        for row in csv.DictReader(lines):
            found.setdefault(row["figure"], []).append(row)
    return found


def _difference(row: Mapping[str, str]) -> float:
    value = reckon(row["figure"], dict(word.split("=", 1) for word in row["inputs"].split())).value
    assert value is not None, row["id"]
    expected = float(row["expected"])
    return abs(value - expected) if expected == 0 else abs(value / expected - 1)


def _compared(name: str, rows: Iterable[Mapping[str, str]]) -> str:
    """What one figure was held against, and the largest difference."""
    outside = [row for row in rows if not row["route"].startswith(ARITHMETIC)]
    if not outside:
        return f"`{name}`: arithmetic and units only, the formula is the model itself"
    routes = dict.fromkeys(re.split(r" \(|;", row["route"])[0] for row in outside)
    worst = share(max(map(_difference, outside)))
    values = f"{len(outside)} value{'s' if len(outside) > 1 else ''}"
    return f"`{name}`: {values}, {'; '.join(routes)}; largest difference {worst}"


def _figure_line(name: str, formula: Formula[...]) -> str:
    grade = formula.spec.grade.value.replace("-", " ")
    return f"| `{name}` | {formula.spec.title} | {grade} | {formula.spec.valid.replace('|', '/')} |"


def order(section: str) -> tuple[int, ...]:
    """Sections as numbers, so that 5.11 follows 5.9."""
    return tuple(int(part) for part in section.split("."))


def _part(section: str, names: Iterable[str], published: Iterable[str]) -> Iterator[str]:
    figures, rows = all_figures(), _rows()
    yield f"\n## {MODELS[section].title}\n"
    yield "| figure | what it is | grade | valid |\n|---|---|---|---|"
    yield from (_figure_line(name, figures[name]) for name in names)
    yield "\nCompared:\n"
    yield from (f"* {_compared(name, rows[name])}" for name in names)
    yield from (f"* {line}" for line in published)
    yield f"\nNot modeled: {MODELS[section].leaves_out}."


def page() -> str:
    """The whole page."""
    sections: dict[str, list[str]] = {}
    for name, formula in all_figures().items():
        sections.setdefault(formula.spec.section, []).append(name)
    published: dict[str, list[str]] = {}
    for section, compare in PUBLISHED:
        published.setdefault(section, []).append(compare())
    parts = [HEAD]
    for section in sorted(sections, key=order):
        parts.extend(_part(section, sections[section], published.get(section, [])))
    return "\n".join(parts) + "\n"


if __name__ == "__main__":
    PAGE.write_text(page(), encoding="utf-8")
