"""The case once more, in a published validation library: what the reader accepts is held against what it accepts.

Each section's declarations are translated, annotation by annotation, into a model of pydantic.
"""

from __future__ import annotations

import types
from collections.abc import Iterable
from functools import cache
from inspect import get_annotations
from typing import Annotated, Any, Union, get_args, get_origin

from annotated_types import Ge, Le, Len
from pydantic import AfterValidator, BaseModel, ConfigDict, create_model
from pydantic import Field as Declared

from advisor.models.case import Case
from advisor.models.contradictions import Contradiction, contradictions
from advisor.models.fields import Length, Quantity, one_line
from advisor.models.section import Section

STRICT = ConfigDict(extra="forbid", frozen=True, allow_inf_nan=False)


class CaseContradiction(ValueError):  # noqa: N818 -- the trade's word for it
    """A case contradicts itself; `found` holds every place."""

    def __init__(self, found: Iterable[Contradiction]) -> None:
        self.found = tuple(found)
        super().__init__("; ".join(f"{' and '.join(entry.fields)}: {entry.text}" for entry in self.found))


def _limits(metadata: object) -> tuple[object, ...]:
    if isinstance(metadata, Quantity):
        return Ge(metadata.least), Le(metadata.most)
    assert isinstance(metadata, Length)
    return (Len(metadata.least, metadata.most),)


def _translated(annotation: Any) -> Any:
    origin, args = get_origin(annotation), get_args(annotation)
    if origin is Annotated:
        limits = [limit for entry in args[1:] for limit in _limits(entry)]
        return Annotated[(_translated(args[0]), *limits)]
    if origin in (Union, types.UnionType):
        return Union[tuple(_translated(arg) for arg in args)]  # noqa: UP007 -- made from a list of kinds
    if origin is tuple:
        return tuple[tuple(arg if arg is Ellipsis else _translated(arg) for arg in args)]  # type: ignore[misc] # as above
    if annotation is str:
        return Annotated[str, AfterValidator(one_line)]
    is_section = isinstance(annotation, type) and issubclass(annotation, Section)
    return twin(annotation) if is_section else annotation


@cache
def twin(model: Any) -> Any:
    """The model of a section in pydantic."""
    fields: dict[str, Any] = {}
    for name, annotation in get_annotations(model).items():
        field = model.declared[name]
        default: Any = {} if isinstance(field.default, Section) else field.default
        declared: Any = Declared() if field.required else Declared(default=default, validate_default=True)
        fields[name] = (_translated(annotation), declared)
    return create_model(model.__name__, __config__=STRICT, **fields)


def _built(model: type[Section], checked: BaseModel) -> Section:
    values = {}
    for name in checked.model_fields_set:
        value = getattr(checked, name)
        values[name] = _built(_section(model, name), value) if isinstance(value, BaseModel) else value
    return model(**values)


def _section(model: type[Section], name: str) -> type[Section]:
    kinds = (get_annotations(model)[name], *get_args(get_annotations(model)[name]))
    return next(kind for kind in kinds if isinstance(kind, type) and issubclass(kind, Section))


def validated(tree: dict[str, Any]) -> Case:
    """The case of a tree of values. Raises pydantic's ValidationError, or CaseContradiction."""
    case = _built(Case, twin(Case).model_validate(tree))
    assert isinstance(case, Case)
    found = contradictions(case.at)
    if found:
        raise CaseContradiction(found)
    return case


def tree_of(section: Section) -> dict[str, Any]:
    """Every field of a case as a tree of values."""
    return {name: tree_of(value) if isinstance(value, Section) else value for name, value in section}
