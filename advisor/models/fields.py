"""What a field of a case holds, read from its annotation: one description for reader, schema and writer.

Here too: a case with one of its fields changed.
"""

import types
from enum import Enum
from inspect import get_annotations
from typing import Annotated, Any, Literal, NamedTuple, TypeVar, Union, get_args, get_origin

from advisor.models.section import Section
from advisor.units import NUMBER, Kind, System, show

LONGEST_TEXT = 100
Model = TypeVar("Model", bound=Section)


class Quantity(NamedTuple):
    """A number of a kind, in its canonical unit, between two limits that mean something in a shop, both included."""

    kind: Kind
    least: float
    most: float

    @property
    def limits(self) -> str:
        """The limits in words, in both systems where they differ."""
        texts = dict.fromkeys(
            f"{show(self.least, self.kind, system, 'up')} to {show(self.most, self.kind, system, 'down')}"
            for system in (System.METRIC, System.INCH)
        )
        first, *other = texts
        return f"from {first}" + (f" ({other[0]})" if other else "")

    @property
    def accepted(self) -> str:
        """Limits and ways of writing."""
        return f"{self.limits}, written like {self.kind.example}"


class Length(NamedTuple):
    """How many entries a list may have, both ends included."""

    least: int
    most: int


class Shape(Enum):
    """How a field is written."""

    QUANTITY = "quantity"
    COUNT = "count"
    WORD = "word"
    TEXT = "text"
    FLAG = "flag"
    QUANTITY_OR_WORD = "quantity or word"
    LIST = "list"
    PAIR = "pair"
    SECTION = "section"


class Spec(NamedTuple):
    """How a field is written, with what belongs to its shape."""

    shape: Shape
    quantity: Quantity | None = None
    words: tuple[str, ...] = ()
    item: "Spec | None" = None
    size: Length = Length(0, 0)
    section: type[Section] | None = None

    @property
    def accepted(self) -> str:
        """What is accepted, in words."""
        if self.shape is Shape.WORD:
            return f"one of {', '.join(self.words)}"
        if self.shape is Shape.FLAG:
            return "yes or no"
        if self.shape is Shape.SECTION and self.section is not None:
            return f"fields of its own: {', '.join(self.section.declared)}"
        if self.shape is Shape.LIST and self.item is not None:
            return f"a list of {self.size[0]} to {self.size[1]} entries in brackets, each {self.item.accepted}"
        if self.quantity is None:
            return f"text of 1 to {LONGEST_TEXT} characters on one line"
        if self.shape is Shape.PAIR:
            return f"a position:diameter, both {self.quantity.accepted}"
        if self.shape is Shape.COUNT:
            return f"a whole number {self.quantity.limits}"
        return ", ".join((self.quantity.accepted, *(f"or {word}" for word in self.words)))


_SPECS: dict[type[Section], dict[str, Spec]] = {}


def specs(model: type[Section]) -> dict[str, Spec]:
    """The fields of a section by name."""
    if model not in _SPECS:
        _SPECS[model] = {name: _spec(annotation) for name, annotation in get_annotations(model).items()}
    return _SPECS[model]


def _spec(annotation: Any, metadata: tuple[Any, ...] = ()) -> Spec:
    origin, args = get_origin(annotation), get_args(annotation)
    if origin is Annotated:
        return _spec(args[0], (*args[1:], *metadata))
    if origin in (Union, types.UnionType):
        return _either([_spec(arg, metadata) for arg in args if arg is not type(None)])
    if origin is Literal:
        return Spec(Shape.WORD, words=args)
    if origin is tuple:
        return _list(args, metadata)
    quantity = next((item for item in metadata if isinstance(item, Quantity)), None)
    if annotation is int:
        return Spec(Shape.COUNT, quantity)
    if quantity is not None:
        return Spec(Shape.QUANTITY, quantity)
    if annotation is bool:
        return Spec(Shape.FLAG)
    if annotation is str:
        return Spec(Shape.TEXT)
    return Spec(Shape.SECTION, section=annotation)


def _either(found: list[Spec]) -> Spec:
    if len(found) == 1:
        return found[0]
    quantity = next(spec.quantity for spec in found if spec.quantity is not None)
    return Spec(Shape.QUANTITY_OR_WORD, quantity, tuple(word for spec in found for word in spec.words))


def _list(args: tuple[Any, ...], metadata: tuple[Any, ...]) -> Spec:
    item = _spec(args[0])
    if args[1] is not Ellipsis:
        return Spec(Shape.PAIR, item.quantity)
    size = next(entry for entry in metadata if isinstance(entry, Length))
    return Spec(Shape.LIST, item=item, size=size)


def one_line(text: str) -> str:
    """A text with single spaces. Raises ValueError: empty, too long, signs that cannot be printed."""
    plain = " ".join(text.split())
    if not plain:
        raise ValueError("is empty")
    if len(plain) > LONGEST_TEXT:
        raise ValueError("is too long")
    if not plain.isprintable():
        raise ValueError("holds signs that cannot be printed")
    return plain


def whole(least: int, most: int) -> Quantity:
    """Limits of a whole number."""
    return Quantity(NUMBER, least, most)


def field_names(model: type[Section]) -> tuple[str, ...]:
    """Every field below a section by its dotted name, sections themselves left out."""
    names: list[str] = []
    for name, spec in specs(model).items():
        if spec.section is None:
            names.append(name)
        else:
            names += [f"{name}.{inner}" for inner in field_names(spec.section)]
    return tuple(names)


def spec_at(model: type[Section], path: tuple[str, ...]) -> Spec | None:
    """The field at a dotted place below a section, None where there is none."""
    spec = specs(model).get(path[0])
    if spec is None or len(path) == 1:
        return spec
    return spec_at(spec.section, path[1:]) if spec.section is not None else None


def changed(case: Model, path: str, value: Any) -> Model:
    """A copy of the case with one dotted field set; nothing is checked again."""
    head, _, rest = path.partition(".")
    if not rest:
        return case.altered({head: value})
    inner, section = getattr(case, head), specs(type(case))[head].section
    assert section is not None
    return case.altered({head: changed(section() if inner is None else inner, rest, value)})
