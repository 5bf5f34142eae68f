"""One name in plain words: a rule, a figure, a limit, a method, a material, a wood, or why a plan stops."""

from __future__ import annotations

import inspect
from collections.abc import Callable

from advisor.quantity import FigureInputError, nearest


def _rule(name: str) -> str | None:
    from advisor.rulebook import load_book

    found = [rule for rule in load_book().rules if rule.name == name]
    return found[0].explain() if found else None


def _figure(name: str) -> str | None:
    from advisor.figure import all_figures

    formula = all_figures().get(name)
    if formula is None:
        return None
    spec = formula.spec
    doc = inspect.cleandoc(formula.__doc__ or "").partition("\n\n>>>")[0]  # the example is for the tests
    return f"{name}: {spec.title}\n\n{doc}\n\nGrade: {spec.grade}. Valid: {spec.valid}."


def _method(name: str) -> str | None:
    from advisor.models.methods import explain, method

    try:
        return explain(method(name))
    except KeyError:
        return None


def _material(name: str) -> str | None:
    from advisor.models.material import explain, resolve

    found = resolve(name)
    return "\n\n".join(explain(record) for record in found.records) if found.records else None


def _wood(name: str) -> str | None:
    from advisor.models.wood import properties, resolve

    found = resolve(name)
    if found.kind in ("none", "unknown"):
        return None
    if found.kind == "several":
        return f"{name} fits several woods:\n" + "\n".join(f"  {wood.label}" for wood in found.woods)
    wood = properties(found, 12.0)
    rows = [
        f"  density {wood.density.typical:.0f} kg/m³ ({wood.density.low:.0f} to {wood.density.high:.0f})",
        f"  crushing along the grain {wood.crushing.typical:.1f} MPa (low {wood.crushing.low:.1f})",
        f"  crushing across the grain {wood.perpendicular.typical:.2f} MPa (low {wood.perpendicular.low:.2f})",
        f"  tension across the grain {wood.tension_perpendicular.typical:.2f} MPa "
        f"(low {wood.tension_perpendicular.low:.2f})",
        f"  stiffness along the grain {wood.modulus.typical:.1f} GPa (low {wood.modulus.low:.1f})",
    ]
    return f"{wood.name} at 12 % moisture\n" + "\n".join(rows)


ACCEPTED = "a rule, figure, limit, method, material, wood, dust-limits or what-is-it"
PAGES = ("dust-limits", "what-is-it")


def _page(name: str) -> str | None:
    from advisor.models.exposure import limits_page
    from advisor.models.questions import path_page

    return {"dust-limits": limits_page, "what-is-it": path_page}[name]() if name in PAGES else None


def _dust(name: str) -> str | None:
    from advisor.models.hazards import for_species

    found = for_species(name)
    if not found:
        return None
    rows = [f"  {entry.title}: {', '.join(entry.effect_words)}. It asks for {entry.control}." for entry in found]
    return "\n".join([f"What is reported of the dust of {name}; a flag, never a dose", *rows])


def _limit(name: str) -> str | None:
    from advisor.models.limits import limit_page

    return limit_page(name)


def _stop(name: str) -> str | None:
    from advisor.planning.fault_pages import fault_page

    return fault_page(name)


FINDERS: tuple[Callable[[str], str | None], ...] = (
    _rule, _limit, _figure, _method, _material, _wood, _dust, _page, _stop,
)  # fmt: skip


def _known() -> list[str]:
    from advisor.figure import all_figures
    from advisor.models.limits import limit_names
    from advisor.models.material import list_materials
    from advisor.models.methods import all_methods
    from advisor.planning.fault_pages import fault_names
    from advisor.rulebook import load_book

    names = [rule.name for rule in load_book().rules] + list(all_figures()) + [entry.id for entry in all_methods()]
    return [*names, *PAGES, *limit_names(), *fault_names(), *(entry["name"] for entry in list_materials())]


def explain(name: str) -> tuple[str, str]:
    """The name and its page. Raises FigureInputError with the nearest names where nothing is called that."""
    pages = [page for page in (finder(name) for finder in FINDERS) if page]
    if not pages:
        hint = nearest(name, _known()) or "; `advisor list rules` and its sisters print the names"
        raise FigureInputError("name", name, f"{ACCEPTED}{hint}")
    return name, "\n\n".join(pages)
