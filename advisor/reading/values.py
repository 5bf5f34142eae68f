"""One value of a case: from the text a person wrote to the number or word the model holds."""

from collections.abc import Callable
from typing import Any

from advisor.models.fields import Shape, Spec, one_line
from advisor.models.words import OTHER_WORDS
from advisor.units import NUMBER, System, UnitError, parse

FLAGS = {"yes": True, "true": True, "no": False, "false": False}


class ValueFault(Exception):  # noqa: N818 -- carried to the problem it becomes
    """A text is no value of its field; `nearest` is what it may have been meant for."""

    def __init__(self, message: str, nearest: str | None = None) -> None:
        super().__init__(message)
        self.message = message
        self.nearest = nearest


def value(text: str, spec: Spec, bare: System | None) -> Any:
    """The value of a text. Raises ValueFault."""
    return READERS[spec.shape](text, spec, bare)


def _quantity(text: str, spec: Spec, bare: System | None) -> float:
    assert spec.quantity is not None
    kind = spec.quantity.kind
    try:
        number = parse(text, kind, bare)
    except UnitError as fault:
        raise ValueFault(fault.reason) from None
    return _within(number, spec)


def _within(number: float, spec: Spec) -> float:
    assert spec.quantity is not None
    if number < spec.quantity.least:
        raise ValueFault("is too small")
    if number > spec.quantity.most:
        raise ValueFault("is too large")
    return number


def _count(text: str, spec: Spec, bare: System | None) -> int:  # noqa: ARG001 -- every reader is called alike
    try:
        number = parse(text, NUMBER)
    except UnitError as fault:
        raise ValueFault(fault.reason) from None
    if number != int(number):
        raise ValueFault("is not a whole number")
    return int(_within(number, spec))


def _word(text: str, spec: Spec, bare: System | None) -> str:  # noqa: ARG001 -- every reader is called alike
    plain = " ".join(text.split()).casefold()
    known = {word.casefold(): word for word in spec.words}
    found = known.get(plain, OTHER_WORDS.get(plain))
    if found in spec.words:
        return found
    from advisor.reading.problems import nearest

    near = nearest(plain.replace(" ", "-").replace("_", "-"), list(known))
    raise ValueFault("is no word of this field", known[near] if near else None)


def _text(text: str, spec: Spec, bare: System | None) -> str:  # noqa: ARG001 -- every reader is called alike
    try:
        return one_line(text)
    except ValueError as fault:
        raise ValueFault(str(fault)) from None


def _flag(text: str, spec: Spec, bare: System | None) -> bool:  # noqa: ARG001 -- every reader is called alike
    found = FLAGS.get(text.strip().casefold())
    if found is None:
        raise ValueFault("is neither yes nor no")
    return found


def _quantity_or_word(text: str, spec: Spec, bare: System | None) -> float | str:
    if any(sign.isdigit() for sign in text):
        return _quantity(text, spec, bare)
    return _word(text, spec, bare)


def _pair(text: str, spec: Spec, bare: System | None) -> tuple[float, float]:
    position, colon, diameter = text.partition(":")
    if not colon:
        raise ValueFault("has no colon between position and diameter")
    return _quantity(position, spec, bare), _quantity(diameter, spec, bare)


READERS: dict[Shape, Callable[[str, Spec, System | None], Any]] = {
    Shape.QUANTITY: _quantity,
    Shape.COUNT: _count,
    Shape.WORD: _word,
    Shape.TEXT: _text,
    Shape.FLAG: _flag,
    Shape.QUANTITY_OR_WORD: _quantity_or_word,
    Shape.PAIR: _pair,
}
