"""Reads the tables of materials and conditions into records.

Numbers stand in `material_values.csv`, one value and one source to a row; words stand in `materials.csv`
and `conditions.csv`.
"""

from __future__ import annotations

from collections import Counter
from functools import lru_cache

from advisor.data.tables import Number, Row, Table, Text, load
from advisor.figure import Spread
from advisor.models.substance import FAMILIES, PROPERTIES, VERDICT_ORDER, LookAlike, Material, Value

_COLUMNS = (
    Text("id"),
    Text("title"),
    Text("family", one_of=FAMILIES),
    Text("verdict", one_of=VERDICT_ORDER),
    Text("fails_by"),
    Text("dust", required=False),
    Text("fire", required=False),
    Text("extinguisher", required=False),
    Text("holding"),
    Text("tool"),
    Text("coolant", required=False),
    Text("takes_glue", one_of=("yes", "no", "care")),
    Text("never"),
    Text("next_step"),
    Text("ask_whom"),
    Text("source"),
    Text("hard", required=False),
    Text("dust_control", required=False),
    Text("hazards", required=False),
    Text("needs", required=False),
    Text("refuse_when", required=False),
    Text("brittle", one_of=("yes", "no")),
)
MATERIALS = Table("materials.csv", _COLUMNS, key=("id",), rows=112)
CONDITIONS = Table("conditions.csv", (*_COLUMNS, Text("case_words", required=False)), key=("id",), rows=31)
VALUES = Table(
    "material_values.csv",
    (
        Text("material"),
        Text("property", one_of=tuple(PROPERTIES)),
        Number("low", -20, 25_000),
        Number("typical", -20, 25_000),
        Number("high", -20, 25_000),
        Text("unit"),
        Text("source"),
        Text("note", required=False),
    ),
    key=("material", "property"),
    rows=1105,
)
NAMES = Table("material_names.csv", (Text("name"), Text("material")), key=("name", "material"), rows=705)
LOOK_ALIKES = Table(
    "material_look_alikes.csv",
    (Text("material"), Text("other"), Text("tell"), Text("source")),
    key=("material", "other"),
    rows=49,
)
WIDE_NAME = 3  # a name that more records than this share ("plastic") is no name of any of them


def _parts(text: str) -> tuple[str, ...]:
    return tuple(part.strip() for part in text.split(";") if part.strip())


def _values() -> dict[str, dict[str, Value]]:
    found: dict[str, dict[str, Value]] = {}
    for row in load(VALUES):
        spread = Spread(row.number("low"), row.number("typical"), row.number("high"))
        value = Value(spread, row.text("unit"), row.text("source"), row.text("note"))
        found.setdefault(row.text("material"), {})[row.text("property")] = value
    return found


def _names() -> tuple[dict[str, list[str]], dict[str, list[str]]]:
    """Names of its own, and names it shares with so many that they say nothing."""
    pairs = [(row.text("name"), row.text("material")) for row in load(NAMES)]
    sharers = Counter(name for name, _ in pairs)
    own: dict[str, list[str]] = {}
    wide: dict[str, list[str]] = {}
    for name, material in pairs:
        (wide if sharers[name] > WIDE_NAME else own).setdefault(material, []).append(name)
    return own, wide


def _look_alikes() -> dict[str, list[LookAlike]]:
    found: dict[str, list[LookAlike]] = {}
    for row in load(LOOK_ALIKES):
        entry = LookAlike(row.text("other"), row.text("tell"), row.text("source"))
        found.setdefault(row.text("material"), []).append(entry)
    return found


def _record(
    row: Row, case_words: str, names: tuple[list[str], list[str]], values: dict[str, Value], others: list[LookAlike]
) -> Material:
    return Material(
        id=row.text("id"),
        title=row.text("title"),
        family=row.text("family"),
        verdict=row.text("verdict"),
        hard=_parts(row.text("hard")),
        fails_by=row.text("fails_by"),
        dust=row.text("dust"),
        dust_control=_parts(row.text("dust_control")),
        fire=row.text("fire"),
        extinguisher=row.text("extinguisher"),
        holding=row.text("holding"),
        tool=row.text("tool"),
        coolant=row.text("coolant"),
        takes_glue=row.text("takes_glue"),
        brittle=row.text("brittle") == "yes",
        hazards=_parts(row.text("hazards")),
        needs=_parts(row.text("needs")),
        refuse_when=_parts(row.text("refuse_when")),
        never=row.text("never"),
        next_step=row.text("next_step"),
        ask_whom=row.text("ask_whom"),
        source=row.text("source"),
        names=tuple(names[0]),
        wide_names=tuple(names[1]),
        values=values,
        look_alikes=tuple(others),
        case_words=_parts(case_words),
    )


@lru_cache(maxsize=1)
def records() -> dict[str, Material]:
    """Every record by its id, materials first."""
    (own, wide), values, others = _names(), _values(), _look_alikes()
    rows = [(row, "") for row in load(MATERIALS)]
    rows += [(row, row.text("case_words")) for row in load(CONDITIONS)]
    found: dict[str, Material] = {}
    for row, words in rows:
        key = row.text("id")
        found[key] = _record(
            row, words, (own.get(key, []), wide.get(key, [])), values.get(key, {}), others.get(key, [])
        )
    return found
