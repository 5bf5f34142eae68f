"""Lists of what there is, and one figure on the screen."""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from advisor.figure import Figure, all_figures, show_quantity

WIDTH = 100
MOST_NAMES = 24


def _figures() -> list[dict[str, Any]]:
    found = []
    for name, formula in all_figures().items():
        spec = formula.spec
        found.append(
            {
                "name": name,
                "title": spec.title,
                "unit": spec.unit,
                "grade": str(spec.grade),
                "formula": f"{spec.symbol} = {spec.equation}",
                "inputs": " ".join(formula.inputs),
                "section": spec.section,
            }
        )
    return found


def _rules() -> list[dict[str, Any]]:
    from advisor.rulebook import load_book
    from advisor.rulebook.rule import read_page

    return [
        {"name": rule.name, "title": read_page(rule.doc).title, "topic": rule.topic, "effect": str(rule.effect)}
        for rule in load_book().rules
    ]


def _methods() -> list[dict[str, Any]]:
    from advisor.models.methods import all_methods

    return [
        {
            "name": method.id,
            "title": method.title,
            "other_names": "; ".join(method.other_names),
            "family": method.family,
            "drives_by": method.drives_by,
            "marks": method.marks,
        }
        for method in all_methods()
    ]


def _sources() -> list[dict[str, Any]]:
    from advisor.report.cited import taken
    from advisor.sources import all_sources

    found = taken()
    return [
        {"name": entry.key, "title": entry.title, "kind": entry.kind, "detail": entry.detail, **found[entry.key]}
        for entry in all_sources().values()
    ]


def entries(kind: str) -> list[dict[str, Any]]:
    """The list of one kind: species, materials, methods, rules, figures or sources."""
    if kind == "species":
        from advisor.models.wood import list_species

        return [dict(entry) for entry in list_species()]
    if kind == "materials":
        from advisor.models.material import list_materials

        return [dict(entry) for entry in list_materials()]
    if kind == "sources":
        return _sources()
    return {"methods": _methods, "rules": _rules, "figures": _figures}[kind]()


def table_lines(found: Sequence[Mapping[str, Any]]) -> Iterator[str]:
    """A list as two columns: name and title."""
    width = max((len(str(entry["name"])) for entry in found), default=0)
    for entry in found:
        yield f"{entry['name']:<{width}}  {entry['title']}"


def source_lines(found: Sequence[Mapping[str, Any]]) -> Iterator[str]:
    """Every source: what is taken from it and which test holds that against something outside."""
    for entry in found:
        yield f"{entry['name']}: {entry['title']} ({entry['kind']})"
        if entry["detail"]:
            yield from _hung("", entry["detail"])
        tables = [f"{one['table']}, {one['rows']} rows{_columns(one['columns'])}" for one in entry["tables"]]
        for label, names in (("tables", tables), *((part, entry[part]) for part in ("constants", "figures", "rules"))):
            if names:
                yield from _hung(f"{label}: ", _some(names, "; " if label == "tables" else ", "))
        if not any(entry[part] for part in ("tables", "constants", "figures", "rules")):
            yield "    nothing is taken from it: background"
        yield from _hung("checked by: ", ", ".join(entry["checked_by"]) or "no test against the outside")


def _columns(names: Sequence[str]) -> str:
    return f" ({', '.join(names)})" if names else " of words"


def _some(names: Sequence[str], joint: str) -> str:
    """The names, or the first of very many; `--json` has them all."""
    rest = len(names) - MOST_NAMES
    return joint.join(names[:MOST_NAMES]) + (f"{joint}and {rest} more" if rest > 0 else "")


def _hung(label: str, text: str) -> Iterator[str]:
    yield from textwrap.wrap(
        label + text, WIDTH, initial_indent="    ", subsequent_indent="      ", break_on_hyphens=False
    )


def figure_lines(figure: Figure) -> Iterator[str]:
    """One figure: value, working, grade, validity, sources."""
    shown = figure.no_answer if figure.value is None else show_quantity(figure.value, figure.unit)
    yield f"{figure.title}: {shown}"
    yield f"  {figure.worked}"
    for name, (value, unit) in figure.also.items():
        yield f"  also {name}: {show_quantity(value, unit)}"
    yield f"  grade: {figure.grade.value}; valid: {figure.range}"
    yield f"  source: {'; '.join(figure.as_dict()['sources'])}"
