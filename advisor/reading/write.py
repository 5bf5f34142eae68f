"""A case as a YAML file that reads back to an equal case."""

from typing import Any

from advisor.models.case import Case
from advisor.models.fields import Shape, Spec, specs
from advisor.models.section import Section
from advisor.units import PERCENT, SLOPE


def write_case(case: Case) -> str:
    """YAML text of a case: every field that was said, each quantity with its unit, exact to the last digit."""
    return "".join(_lines(case, ""))


def _lines(section: Section, indent: str) -> list[str]:
    lines: list[str] = []
    for name, spec in specs(type(section)).items():
        value = getattr(section, name)
        if value is None or value == type(section).declared[name].default:
            continue
        if isinstance(value, Section):
            below = _lines(value, indent + "  ")
            lines += [f"{indent}{name}:\n", *below] if below else [f"{indent}{name}: {{}}\n"]
        else:
            lines.append(f"{indent}{name}: {_text(value, spec)}\n")
    return lines


def _text(value: Any, spec: Spec) -> str:
    if spec.item is not None:
        return f"[{', '.join(_text(item, spec.item) for item in value)}]"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if spec.shape is Shape.TEXT:
        return '"' + str(value).replace("\\", "\\\\").replace('"', '\\"') + '"'
    if isinstance(value, str) or spec.shape is Shape.COUNT:
        return str(value)
    if spec.shape is Shape.PAIR:
        return ":".join(_quantity(part, spec) for part in value)
    return _quantity(value, spec)


def _quantity(value: float, spec: Spec) -> str:
    assert spec.quantity is not None
    kind = spec.quantity.kind
    number = repr(float(value)).removesuffix(".0")
    if kind is SLOPE:
        return f"1:{number}"
    return f"{number}%" if kind is PERCENT else f"{number} {kind.unit}"
