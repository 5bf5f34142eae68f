"""What a case is made of: sections with declared fields, each of which may be missing, and nothing changed afterwards.

The reader checks every value against these declarations, with line and column; nothing here checks anything again.
"""

from collections.abc import Iterator, Mapping
from inspect import get_annotations
from typing import Any, ClassVar, NamedTuple, NoReturn, TypeVar

Part = TypeVar("Part", bound="Section")


class Field(NamedTuple):
    """What is declared of a field beside its kind."""

    description: str = ""
    required: bool = False
    default: Any = None


def said(description: str) -> Any:
    """A field that may be missing: nobody said."""
    return Field(description)


def needed(description: str = "") -> Any:
    """A field that must be there."""
    return Field(description, required=True)


class Section:
    """Part of a case. Two are equal when all their fields are."""

    declared: ClassVar[dict[str, Field]]

    def __init_subclass__(cls) -> None:
        """What stands beside an annotation is a declaration, or else the default."""
        cls.declared = {}
        for name in get_annotations(cls):
            found = vars(cls)[name]
            field = found if isinstance(found, Field) else Field(default=found)
            cls.declared[name] = field
            setattr(cls, name, field.default)

    def __init__(self, **values: Any) -> None:
        """Raises TypeError for a field that is not declared."""
        unknown = values.keys() - self.declared.keys()
        if unknown:
            raise TypeError(f"{type(self).__name__} has no field {', '.join(sorted(unknown))}")
        vars(self).update(values)

    def __setattr__(self, name: str, value: object) -> NoReturn:
        raise AttributeError(f"a case does not change; altered() makes another with a different {name}")

    def __iter__(self) -> Iterator[tuple[str, Any]]:
        """Name and value of every field, said or not."""
        return ((name, getattr(self, name)) for name in self.declared)

    def __eq__(self, other: object) -> bool:
        return type(other) is type(self) and tuple(self) == tuple(other)

    def __hash__(self) -> int:
        return hash(tuple(self))

    def __repr__(self) -> str:
        given = ", ".join(f"{name}={value!r}" for name, value in vars(self).items())
        return f"{type(self).__name__}({given})"

    def at(self, path: str) -> Any:
        """The value of a dotted field, None where nobody said."""
        value: Any = self
        for part in path.split("."):
            value = getattr(value, part, None)
        return value

    def altered(self: Part, changes: Mapping[str, Any]) -> Part:
        """A copy with some fields different. Raises TypeError for a field that is not declared."""
        return type(self)(**{**vars(self), **changes})
