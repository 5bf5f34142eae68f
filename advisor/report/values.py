"""A value of a case as a person would write it."""

from __future__ import annotations

from typing import Any

from advisor.models.case import Case
from advisor.models.fields import Spec, spec_at, specs
from advisor.models.section import Section
from advisor.units import System, show

NOT_SAID = "not said"


def said(path: str, value: Any, units: str) -> str:
    """The value of a dotted field of a case, in one system of units."""
    spec = spec_at(Case, tuple(path.split(".")))
    return NOT_SAID if value is None or spec is None else _text(value, spec, System(units))


def _text(value: Any, spec: Spec, system: System) -> str:
    if isinstance(value, Section):
        inner = specs(type(value)).items()
        return ", ".join(f"{name} {_text(getattr(value, name), part, system)}" for name, part in inner)
    if spec.item is not None:
        return ", ".join(_text(item, spec.item, system) for item in value)
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, tuple):
        return ":".join(_text(part, spec, system) for part in value)
    if isinstance(value, str) or spec.quantity is None:
        return str(value)
    return show(float(value), spec.quantity.kind, system)
