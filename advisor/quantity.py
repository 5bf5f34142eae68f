"""Inputs of figures: their units, the bounds beyond which they make no sense, and how they are read from text."""

import re
from collections.abc import Mapping, Sequence
from typing import Annotated, Any, Literal, NamedTuple, get_args, get_origin

GIVEN = re.compile(r"\s*([-+]?[\d\s./-]*\d(?:[eE][-+]?\d+)?)\s*(.*?)\s*$")


class FigureInputError(ValueError):
    """An input that makes no sense: its name, what was given if anything, what is wrong with it, what is accepted."""

    def __init__(self, name: str, value: object, accepted: str, reason: str = "was given") -> None:
        given = "is missing" if value is None else f"{value!r} {reason}"
        super().__init__(f"{name}: {given}; accepted: {accepted}")
        self.name = name
        self.value = value
        self.accepted = accepted


def nearest(word: str, known: Sequence[str]) -> str:
    """`; did you mean ...?` when something known is close, else nothing."""
    from difflib import get_close_matches

    close = get_close_matches(str(word).lower(), known, n=3, cutoff=0.6)
    return f"; did you mean {' or '.join(close)}?" if close else ""


class Unit(NamedTuple):
    """Unit of an input with the bounds beyond which it makes no sense.

    `kind` names the Kind in `advisor.units` that reads it, `convert_to` the unit asked of that module where it is not
    the canonical one; `shape` is a single value, a list, a list of position:diameter pairs, or a value in whatever unit
    the reader chose.
    """

    kind: str
    text: str
    least: float
    most: float
    convert_to: str = ""
    shape: Literal["one", "list", "pairs", "given"] = "one"
    whole: bool = False

    def check(self, name: str, value: Any) -> None:
        """Raise FigureInputError unless every number in `value` lies within the bounds."""
        for number_ in self._numbers(value):
            if not self.least <= number_ <= self.most or (self.whole and number_ != int(number_)):
                raise FigureInputError(name, number_, self.accepted)

    def _numbers(self, value: Any) -> Sequence[float]:
        if self.shape == "list":
            return tuple(value)
        if self.shape == "pairs":
            return tuple(number_ for pair in value for number_ in pair)
        return (value,)

    @property
    def accepted(self) -> str:
        """What is accepted, in words."""
        what = {"list": "a list of values", "pairs": "pairs position:diameter"}.get(self.shape, "a value")
        if self.whole:
            what = "a whole number"
        unit = f" in {self.text}" if self.text else ""
        return f"{what}{unit} from {self.least:g} to {self.most:g}"

    def read(self, name: str, text: str) -> Any:
        """The number, list or pairs written in `text`, in this unit. Raises FigureInputError."""
        if self.shape == "given":
            return split_given(name, text)[0]
        if self.shape == "one":
            return self._one(name, text)
        items = [item.strip() for item in text.strip().strip("[]").split(",")]
        if self.shape == "pairs":
            return tuple(self._pair(name, item) for item in items)
        return tuple(self._one(name, item) for item in items)

    def _pair(self, name: str, text: str) -> tuple[float, float]:
        position, colon, diameter = text.partition(":")
        if not colon:
            raise FigureInputError(name, text, "pairs position:diameter with commas between, a unit on every number")
        return self._one(name, position), self._one(name, diameter)

    def _one(self, name: str, text: str) -> float:
        from advisor import units

        kind: units.Kind = getattr(units, self.kind)
        try:
            value = units.parse(text, kind)
        except units.UnitError as fault:
            raise FigureInputError(name, text, fault.accepted, fault.reason) from None
        return units.convert(value, kind, self.convert_to) if self.convert_to else value


def split_given(name: str, text: str) -> tuple[float, str]:
    """Number and unit of a value in any unit `advisor.units` knows, the number as it was written."""
    from advisor import units

    match = GIVEN.match(text)
    if match is None or not any(_reads(text, kind) for kind in vars(units).values() if isinstance(kind, units.Kind)):
        raise FigureInputError(name, text, "a number with or without a unit")
    return units.parse(match.group(1), units.NUMBER), match.group(2)


def _reads(text: str, kind: Any) -> bool:
    from advisor import units

    try:
        units.parse(text, kind)
    except units.UnitError:
        return False
    return True


class Input(NamedTuple):
    """One input of a formula: its unit or its choice of words, and whether it may be left out."""

    name: str
    unit: Unit | None
    choices: tuple[str, ...]
    required: bool
    default: Any

    @property
    def text(self) -> str:
        """The unit as it is printed."""
        return self.unit.text if self.unit is not None else ""

    @property
    def accepted(self) -> str:
        """What is accepted, in words."""
        if self.unit is not None:
            return self.unit.accepted
        return f"one of {', '.join(self.choices)}" if self.choices else "a name"

    def check(self, value: Any) -> None:
        """Raise FigureInputError for a value out of bounds or a word that is not a choice."""
        if value is None and not self.required:
            return
        if self.unit is not None:
            self.unit.check(self.name, value)
        elif self.choices and value not in self.choices:
            raise FigureInputError(self.name, value, self.accepted + nearest(value, self.choices))

    def read(self, text: str) -> Any:
        """The value written in `text`. Raises FigureInputError."""
        return self.unit.read(self.name, text) if self.unit is not None else text.strip()


def declared_input(name: str, hint: Any, defaults: Mapping[str, Any]) -> Input:
    """The Input that a parameter's type hint declares."""
    unit: Unit | None = None
    choices: tuple[str, ...] = ()
    for part in (hint, *get_args(hint)):
        if get_origin(part) is Annotated:
            unit = next(entry for entry in get_args(part) if isinstance(entry, Unit))
        elif get_origin(part) is Literal:
            choices = get_args(part)
    return Input(name, unit, choices, name not in defaults, defaults.get(name))


mm = Annotated[float, Unit("LENGTH", "mm", 1e-3, 1e5)]
mm_or_zero = Annotated[float, Unit("LENGTH", "mm", 0.0, 1e5)]
lengths = Annotated[Sequence[float], Unit("LENGTH", "mm", 0.0, 1e5, shape="list")]
profile_pairs = Annotated[Sequence[tuple[float, float]], Unit("LENGTH", "mm", 0.0, 1e5, shape="pairs")]
kg = Annotated[float, Unit("MASS", "kg", 1e-6, 1e5)]
N = Annotated[float, Unit("FORCE", "N", 0.0, 1e7)]
Nm = Annotated[float, Unit("TORQUE", "N·m", 0.0, 1e6)]
MPa = Annotated[float, Unit("STRESS", "MPa", 1e-6, 1e4)]
GPa = Annotated[float, Unit("STRESS", "GPa", 1e-4, 1e3, convert_to="GPa")]
kPa = Annotated[float, Unit("PRESSURE", "kPa", 0.0, 1e3)]  # noqa: N816 -- the unit's own spelling
deg = Annotated[float, Unit("ANGLE", "°", 0.0, 90.0)]
half_angle_deg = Annotated[float, Unit("ANGLE", "°", 0.1, 89.0)]
flank_angle_deg = Annotated[float, Unit("ANGLE", "°", 0.0, 80.0)]
rake_deg = Annotated[float, Unit("ANGLE", "°", -90.0, 90.0)]
rpm = Annotated[float, Unit("RPM", "rpm", 0.0, 1e6)]
turning_rpm = Annotated[float, Unit("RPM", "rpm", 1e-3, 1e6)]
m_per_s = Annotated[float, Unit("SPEED", "m/s", 0.0, 1e4)]
m_per_min = Annotated[float, Unit("CUTTING_SPEED", "m/min", 0.0, 1e5)]
mm_per_s = Annotated[float, Unit("TRAVERSE", "mm/s", 0.0, 1e5)]
kg_per_m3 = Annotated[float, Unit("DENSITY", "kg/m³", 1.0, 3e4)]
J_per_m2 = Annotated[float, Unit("FRACTURE_ENERGY", "J/m²", 1e-3, 1e6)]
K_rise = Annotated[float, Unit("RISE", "K", -500.0, 2000.0)]
per_K = Annotated[float, Unit("EXPANSION", "/K", 0.0, 0.01)]  # noqa: N816 -- the unit's own spelling
kg_m = Annotated[float, Unit("MASS_RADIUS", "kg·m", 1e-9, 1e4)]
altitude_m = Annotated[float, Unit("ALTITUDE", "m", -2000.0, 11000.0)]
percent = Annotated[float, Unit("PERCENT", "%", 0.0, 300.0)]
number = Annotated[float, Unit("NUMBER", "", 0.0, 1e6)]
positive = Annotated[float, Unit("NUMBER", "", 1e-6, 1e6)]
friction_number = Annotated[float, Unit("NUMBER", "", 0.0, 2.0)]
share_number = Annotated[float, Unit("NUMBER", "", 0.0, 1.0)]
part_number = Annotated[float, Unit("NUMBER", "", 1e-4, 1.0)]
factor_number = Annotated[float, Unit("NUMBER", "", 1.0, 100.0)]
poisson_number = Annotated[float, Unit("NUMBER", "", 0.0, 0.5)]
gravity_number = Annotated[float, Unit("NUMBER", "", 0.05, 1.6)]
variation_number = Annotated[float, Unit("NUMBER", "", 0.0, 2.0)]
count = Annotated[float, Unit("NUMBER", "", 1.0, 1000.0, whole=True)]
as_given = Annotated[float, Unit("NUMBER", "", 0.0, 1e15, shape="given")]
