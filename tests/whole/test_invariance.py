"""The same job said another way gives the same JSON: units, order of fields, file format, place and time.

Not nearly the same: the same text, to the last figure.
"""

from __future__ import annotations

import json
import os
import random
import re
import subprocess
import sys
from collections.abc import Iterator, Mapping
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest
import yaml

from advisor.advice.whole import answer_for
from advisor.reading import read_case, read_text
from advisor.reading.files import Format
from tests.conftest import SEED, scale
from tests.whole.answers import ALL

Tree = dict[str, Any]
PERSON = {"extraction": "yes", "respirator": "P2"}
JOBS: dict[str, Tree] = {
    "spindle": {
        "work": {
            "material": "sugar maple", "form": "square", "grain": "along", "state": "not-round", "diameter": "3 in",
            "length": "18 in", "finished_diameter": "1.75 in", "moisture": "9%", "purpose": "spindle",
        },
        "machine": {
            "kind": "metal-lathe", "nose": "cam-lock", "swing": "13 in", "swing_over_carriage": "7.5 in", "min_rpm": 70,
            "max_rpm": 1400, "mass": "1500 lb", "stand": "heavy-iron", "handwheel_lead": "0.1 in",
        },
        "hold": {"method": "spur-drive", "tail": {"kind": "live-cup", "cup_diameter": "0.75 in", "rating": "450 lbf"}},
        "cut": {"force": "20 lbf"},
        "person": PERSON,
    },
    "wet bowl": {
        "work": {
            "material": "white ash", "form": "disc", "diameter": "10 in", "length": "4 in", "moisture": "green",
            "purpose": "bowl", "condition": ["check", "knot"], "crack": {"across": "0.5 in", "along": "0.25 in"},
            "radii": ["4.9 in", "5 in", "5 in", "4.8 in", "4.7 in", "4.8 in"],
        },
        "machine": {"mass": "330 lb", "speeds": [300, 500, 800, 1400], "base_width": "18 in"},
        "hold": {"kit": ["faceplate-screws", "jaws-on-tenon"], "screws": {"count": 6, "diameter": "0.216 in"}},
        "person": PERSON,
    },
    "turned foot": {
        "work": {
            "material": "black walnut", "form": "disc", "state": "finished", "diameter": "12 in", "length": "1.25 in",
            "wall": "0.375 in", "floor": "0.5 in", "purpose": "platter", "moisture": "8%", "mass": "3 lb",
        },
        "hold": {"method": "vacuum", "vacuum": {"gauge": "20 inHg", "seal_diameter": "4 in"}, "overhang": "1.25 in"},
        "machine": {"altitude": "5000 ft", "mass": "600 lb"},
    },
    "rod": {
        "work": {"material": "acetal", "form": "round", "state": "round", "diameter": "1 in", "length": "3.5 in"},
        "hold": {"method": "collet", "chuck": {"grip": "900 lbf", "max_rpm": 3000}},
        "cut": {"tool": "carriage", "depth": "0.04 in", "feed": "0.006 in", "tool_material": "carbide"},
        "machine": {"power": "1.5 hp"},
    },
}  # fmt: skip
# What an inch unit is in a metric one, exactly.
METRIC = {"in": ("25.4", "mm"), "lb": ("0.45359237", "kg"), "lbf": ("4.4482216152605", "N"), "ft": ("0.3048", "m")}


def metric(value: Any) -> Any:
    """The same tree with every inch quantity written in a metric unit."""
    if isinstance(value, dict):
        return {name: metric(part) for name, part in value.items()}
    if isinstance(value, list):
        return [metric(part) for part in value]
    found = re.fullmatch(r"([\d.]+) (in|lb|lbf|ft)", str(value))
    if found is None:
        return value
    factor, unit = METRIC[found[2]]
    return f"{Decimal(found[1]) * Decimal(factor)} {unit}"


def shuffled(value: Any, dice: random.Random) -> Any:
    """The same tree with its fields in another order; a list is a value and keeps its own."""
    if not isinstance(value, dict):
        return value
    names = dice.sample(list(value), len(value))
    return {name: shuffled(value[name], dice) for name in names}


def toml(tree: Mapping[str, Any], above: str = "") -> Iterator[str]:
    """The lines of a tree as TOML."""
    for name, value in tree.items():
        if not isinstance(value, dict):
            yield f"{name} = {json.dumps(value, ensure_ascii=False)}"
    for name, value in tree.items():
        if isinstance(value, dict):
            yield f"[{above}{name}]"
            yield from toml(value, f"{above}{name}.")


def written(tree: Tree, format_: Format) -> str:
    if format_ == "yaml":
        return yaml.safe_dump(tree, sort_keys=False, allow_unicode=True)
    return json.dumps(tree) if format_ == "json" else "\n".join(toml(tree)) + "\n"


def told(tree: Tree, format_: Format = "json") -> str:
    case = read_text(written(tree, format_), format_, f"case.{format_}")
    return json.dumps(answer_for(case, ALL), ensure_ascii=False, allow_nan=False)


@pytest.mark.parametrize("name", JOBS)
def test_a_file_of_any_format_says_the_same(name: str) -> None:
    assert told(JOBS[name], "yaml") == told(JOBS[name], "toml") == told(JOBS[name], "json")


@pytest.mark.parametrize("name", JOBS)
def test_words_say_the_same_as_a_file(name: str) -> None:
    def words(tree: Tree, above: str = "") -> Iterator[str]:
        for field, value in tree.items():
            if isinstance(value, dict):
                yield from words(value, f"{above}{field}.")
                continue
            text = f"[{', '.join(map(str, value))}]" if isinstance(value, list) else str(value)
            yield f"{above}{field}={text}"

    found = answer_for(read_case(None, list(words(JOBS[name]))), ALL)
    assert json.dumps(found, ensure_ascii=False, allow_nan=False) == told(JOBS[name])


@pytest.mark.parametrize("name", JOBS)
def test_inch_and_metric_say_the_same(name: str) -> None:
    twin = metric(JOBS[name])
    assert twin != JOBS[name]
    assert told(twin) == told(JOBS[name])
    assert told({"units": "inch", **twin}) == told({"units": "metric", **JOBS[name]}) == told(JOBS[name])


@pytest.mark.parametrize("name", JOBS)
def test_the_order_of_the_fields_says_nothing(name: str) -> None:
    turned = shuffled(JOBS[name], random.Random(3))
    assert list(turned) != list(JOBS[name]) or list(turned["work"]) != list(JOBS[name]["work"])
    assert told(turned, "yaml") == told(JOBS[name])


@pytest.mark.slow
@pytest.mark.properties
@pytest.mark.parametrize("name", JOBS)
def test_no_order_in_no_format_says_anything(name: str) -> None:
    dice, expected = random.Random(SEED), told(JOBS[name])
    formats: tuple[Format, ...] = ("yaml", "toml", "json")
    for _ in range(scale(300)):
        tree = metric(JOBS[name]) if dice.random() < 0.5 else JOBS[name]
        assert told(shuffled(tree, dice), dice.choice(formats)) == expected


BARE = {"PATH": "/usr/bin:/bin"}
PLACES: dict[str, dict[str, str]] = {
    "hash seed 0": {"PYTHONHASHSEED": "0"},
    "hash seed 1": {"PYTHONHASHSEED": "1"},
    "hash seed 4294967295": {"PYTHONHASHSEED": "4294967295"},
    "C locale": {"LC_ALL": "C", "LANG": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"},
    "POSIX locale": {"LC_ALL": "POSIX"},
    "a locale that is not there": {"LC_ALL": "de_DE.UTF-8", "LANG": "de_DE.UTF-8", "LC_NUMERIC": "de_DE.UTF-8"},
    "east of the date line": {"TZ": "Pacific/Kiritimati"},
    "half an hour off": {"TZ": "Asia/Kolkata"},
    "a time zone that is none": {"TZ": "Nowhere/At_All"},
    "a narrow terminal": {"COLUMNS": "20", "LINES": "5", "TERM": "dumb"},
    "color wanted": {"FORCE_COLOR": "1", "CLICOLOR_FORCE": "1"},
    "no home": {"HOME": "/nonexistent"},
    "optimized": {"PYTHONOPTIMIZE": "2"},
}
QUICK = ("hash seed 1", "C locale", "half an hour off")


def printed(path: Path, place: Mapping[str, str], *options: str, folder: Path | None = None) -> bytes:
    """What one process of its own prints as JSON."""
    line = [sys.executable, "-m", "advisor.cli", "advise", str(path), "--json", *options]
    environment = {**BARE, **place, "PYTHONDONTWRITEBYTECODE": "1"}
    found = subprocess.run(line, env=environment, cwd=folder, capture_output=True, check=False)
    assert (found.returncode, found.stderr) == (0, b"")
    return found.stdout


def case_file(folder: Path, name: str) -> Path:
    path = folder / "case.json"
    path.write_text(written(JOBS[name], "json"), encoding="utf-8")
    return path


def test_process_place_and_time_say_nothing(tmp_path: Path) -> None:
    path = case_file(tmp_path, "wet bowl")
    expected = json.loads(told(JOBS["wet bowl"]))
    for place in QUICK:
        assert json.loads(printed(path, PLACES[place], "--units", "inch", folder=tmp_path)) == expected, place


@pytest.mark.slow
@pytest.mark.properties
@pytest.mark.parametrize("name", JOBS)
def test_no_process_place_or_time_says_anything(name: str, tmp_path: Path) -> None:
    path = case_file(tmp_path, name)
    expected = printed(path, {"LANG": "C.UTF-8"})
    assert json.loads(expected) == json.loads(told(JOBS[name]))
    for place, environment in PLACES.items():
        found = printed(path, environment, folder=tmp_path)
        assert json.loads(found) == json.loads(expected), place
        assert found == expected or place == "C locale", place
    for options in (("--units", "inch"), ("--units", "metric"), ("--plain",)):
        assert printed(path, {}, *options, folder=Path(os.sep)) == expected, options
