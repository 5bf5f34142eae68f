"""Lists of what there is, and one figure on the screen."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from advisor.figure import Figure, all_figures, show_quantity


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


def entries(kind: str) -> list[dict[str, Any]]:
    """The list of one kind: species, materials, methods, rules, figures or sources."""
    if kind == "species":
        from advisor.models.wood import list_species

        return [dict(entry) for entry in list_species()]
    if kind == "materials":
        from advisor.models.material import list_materials

        return [dict(entry) for entry in list_materials()]
    if kind == "sources":
        from advisor.sources import all_sources

        return [
            {"name": entry.key, "title": entry.title, "kind": entry.kind, "detail": entry.detail}
            for entry in all_sources().values()
        ]
    return {"methods": _methods, "rules": _rules, "figures": _figures}[kind]()


def table_lines(found: Sequence[Mapping[str, Any]]) -> Iterator[str]:
    """A list as two columns: name and title."""
    width = max((len(str(entry["name"])) for entry in found), default=0)
    for entry in found:
        yield f"{entry['name']:<{width}}  {entry['title']}"


def figure_lines(figure: Figure) -> Iterator[str]:
    """One figure: value, working, grade, validity, sources."""
    shown = figure.no_answer if figure.value is None else show_quantity(figure.value, figure.unit)
    yield f"{figure.title}: {shown}"
    yield f"  {figure.worked}"
    for name, (value, unit) in figure.also.items():
        yield f"  also {name}: {show_quantity(value, unit)}"
    yield f"  grade: {figure.grade.value}; valid: {figure.range}"
    yield f"  source: {'; '.join(figure.as_dict()['sources'])}"
