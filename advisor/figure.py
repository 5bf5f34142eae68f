"""What a figure is: a formula with named inputs in named units, a grade, sources, and a value with its working.

A figure computes and never decides. `@figure(...)` turns a plain function into a `Formula`: calling it gives the bare
number (for loops), `.figure(...)` gives the `Figure` with everything a reader may ask of it.
"""

import importlib
import inspect
import math
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from enum import Enum
from functools import cached_property
from typing import Any, Generic, NamedTuple, ParamSpec

from advisor.quantity import FigureInputError as FigureInputError
from advisor.quantity import Input, declared_input, nearest, split_given
from advisor.sources import source

P = ParamSpec("P")
Also = Mapping[str, tuple[float, str]]

SYMBOL = re.compile(r"[A-Za-zΑ-Ωα-ωµ][A-Za-z0-9Α-Ωα-ωµ_]*")
SUPERSCRIPTS = "²³⁴⁵⁶^"


class Spread(NamedTuple):
    """Low, typical and high value of something that scatters; each formula takes the unfavorable end."""

    low: float
    typical: float
    high: float


class Grade(str, Enum):
    """How far a number can be trusted, printed next to it."""

    CALCULATED = "calculated"
    ESTIMATE = "estimate"
    ROUGH_GUIDE = "rough-guide"
    PRACTICE = "practice"

    def __str__(self) -> str:
        return self.value


class NoAnswer(Exception):  # noqa: N818 -- an answer of its own kind, not a fault
    """There is no number for these inputs; `reason` says why in plain words."""

    def __init__(self, reason: str) -> None:
        super().__init__(reason)
        self.reason = reason


@dataclass(frozen=True)
class Figure:
    """A worked figure. `value` is None where there is no answer, and `no_answer` says why."""

    name: str
    title: str
    symbol: str
    equation: str
    inputs: Mapping[str, tuple[Any, str]]
    value: float | None
    unit: str
    grade: Grade
    range: str
    sources: tuple[str, ...]
    also: Also = field(default_factory=dict)
    no_answer: str | None = None
    symbols: Mapping[str, str] = field(default_factory=dict)

    @property
    def formula(self) -> str:
        """The equation with its left-hand side."""
        return f"{self.symbol} = {self.equation}"

    @cached_property
    def worked(self) -> str:
        """The equation, the same with numbers and units put in, the result, and the inputs that are no letter in it."""
        letters = {self.symbols.get(name, name): entry for name, entry in {**self.inputs, **self.also}.items()}
        filled = _put_in(self.equation, letters)
        used = set(SYMBOL.findall(self.equation))
        rest = [name for name, (value, _) in self.inputs.items() if value is not None]
        rest = [name for name in rest if self.symbols.get(name, name) not in used]
        told = ", ".join(f"{name} = {show_quantity(*self.inputs[name])}" for name in rest)
        line = self.formula if filled == self.equation else f"{self.formula} = {filled}"
        if self.value is None:
            line += f"; no answer: {self.no_answer}"
        else:
            figures = 2 if self.grade is Grade.ROUGH_GUIDE else 4
            line += f" = {show_quantity(self.value, self.unit, figures)}"
        return f"{line} ({told})" if told else line

    def as_dict(self) -> dict[str, Any]:
        """The figure as JSON holds it; `value` is not rounded."""
        answer: dict[str, Any] = {
            "figure": self.name,
            "value": self.value,
            "unit": self.unit,
            "grade": self.grade.value,
            "formula": self.formula,
            "worked": self.worked,
            "sources": [source(key).title for key in self.sources],
            "range": self.range,
        }
        if self.also:
            answer["also"] = {name: {"value": value, "unit": unit} for name, (value, unit) in self.also.items()}
        if self.no_answer is not None:
            answer["no_answer"] = self.no_answer
        return answer


def show_number(value: float, figures: int = 4) -> str:
    """A number to that many figures, without an exponent where a person can read it."""
    if value == 0 or not math.isfinite(value):
        return f"{value:g}"
    size = math.floor(math.log10(abs(value)))
    if not -5 <= size < 9:
        return f"{value:.{figures - 1}e}"
    rounded = round(value, figures - 1 - size) if figures < 4 or size < 3 else round(value)
    text = f"{rounded:.{max(figures - 1 - size, 0)}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def show_quantity(value: Any, unit: str, figures: int = 4) -> str:
    """A value with its unit; kN from a thousand newtons, a list with its items, an input left out as zero."""
    if value is None:
        value = 0.0
    if isinstance(value, str):
        return value
    if isinstance(value, (tuple, list)):
        pairs = [
            ":".join(show_number(part) for part in item) if isinstance(item, tuple) else show_number(item)
            for item in value
        ]
        return f"{', '.join(pairs)} {unit}".rstrip()
    if unit == "N" and abs(value) >= 1000:
        value, unit = value / 1000, "kN"
    return f"{show_number(value, figures)}{'' if unit in ('', '°') else ' '}{unit}"


def _put_in(equation: str, letters: Mapping[str, tuple[Any, str]]) -> str:
    def filled(match: re.Match[str]) -> str:
        if match.group() not in letters:
            return match.group()
        value, unit = letters[match.group()]
        text = show_quantity(value, unit)
        powered = equation[match.end() : match.end() + 1] in SUPERSCRIPTS and match.end() < len(equation)
        divisor = equation[: match.start()].endswith("/") and ("/" in unit or "·" in unit)
        return f"({text})" if divisor or (powered and unit) or text.startswith("-") else text

    return SYMBOL.sub(filled, equation)


class Spec(NamedTuple):
    """What the decorator is told about a formula."""

    title: str
    symbol: str
    equation: str
    unit: str
    grade: Grade
    sources: tuple[str, ...]
    valid: str
    section: str
    symbols: Mapping[str, str]
    forms: Callable[[Mapping[str, Any]], str] | None
    also: Callable[..., Also] | None


class Formula(Generic[P]):
    """A function of physics that knows its name, units, grade, validity and sources."""

    def __init__(self, function: Callable[P, float], spec: Spec) -> None:
        self._function = function
        self.spec = spec
        self.__name__ = function.__name__
        self.__module__ = function.__module__
        self.__doc__ = function.__doc__
        self.name = function.__name__.replace("_", "-")

    def __call__(self, *args: P.args, **kwargs: P.kwargs) -> float:
        """The bare number in the figure's unit; raises NoAnswer or FigureInputError."""
        self._check(args, kwargs)
        return self._function(*args, **kwargs)

    def figure(self, *args: P.args, **kwargs: P.kwargs) -> Figure:
        """The same as a Figure, in which "no answer" is a value and not an exception."""
        given = self._check(args, kwargs)
        filled = {name: given.get(name, entry.default) for name, entry in self.inputs.items()}
        value: float | None = None
        reason: str | None = None
        also: Also = {}
        try:
            found = self._function(*args, **kwargs)
            also = self.spec.also(**filled) if self.spec.also is not None else {}
            value = found
        except NoAnswer as no_answer:
            reason = no_answer.reason
        return Figure(
            name=self.name,
            title=self.spec.title,
            symbol=self.spec.symbol,
            equation=self.spec.forms(filled) if self.spec.forms is not None else self.spec.equation,
            inputs={name: (filled[name], entry.text) for name, entry in self.inputs.items()},
            value=value,
            unit=self.spec.unit,
            grade=self.spec.grade,
            range=self.spec.valid,
            sources=self.spec.sources,
            also=also,
            no_answer=reason,
            symbols=self.spec.symbols,
        )

    @cached_property
    def inputs(self) -> dict[str, Input]:
        """Inputs in order, read from the function's own signature."""
        hints = inspect.get_annotations(self._function, eval_str=True)
        parameters = inspect.signature(self._function).parameters
        defaults = {name: entry.default for name, entry in parameters.items() if entry.default is not entry.empty}
        return {name: declared_input(name, hints[name], defaults) for name in parameters}

    def _check(self, args: tuple[Any, ...], kwargs: Mapping[str, Any]) -> dict[str, Any]:
        inputs = self.inputs
        given: dict[str, Any] = {**dict(zip(inputs, args, strict=False)), **kwargs}
        for name, value in given.items():
            if name in inputs:  # an unknown name is Python's own TypeError
                inputs[name].check(value)
        return given


_FIGURES: dict[str, Formula[Any]] = {}


def figure(
    *,
    title: str,
    symbol: str,
    equation: str,
    unit: str,
    grade: Grade,
    sources: tuple[str, ...],
    valid: str,
    section: str,
    symbols: Mapping[str, str] | None = None,
    forms: Callable[[Mapping[str, Any]], str] | None = None,
    also: Callable[..., Also] | None = None,
) -> Callable[[Callable[P, float]], Formula[P]]:
    """Make a figure of a function; its name is the function's with dashes.

    `symbols` gives inputs and `also` values the letters they have in the equation; `forms` names the equation that
    belongs to the inputs where there are several; `also` works out further numbers from the same inputs.
    """
    spec = Spec(title, symbol, equation, unit, grade, sources, valid, section, symbols or {}, forms, also)

    def wrap(function: Callable[P, float]) -> Formula[P]:
        formula = Formula(function, spec)
        _FIGURES[formula.name] = formula
        return formula

    return wrap


def all_figures() -> dict[str, Formula[Any]]:
    """Every figure by name; the physics is imported on the first call."""
    import pkgutil

    from advisor import physics

    for module in pkgutil.iter_modules(physics.__path__):
        importlib.import_module(f"advisor.physics.{module.name}")
    return dict(sorted(_FIGURES.items()))


def find_figure(name: str) -> Formula[Any]:
    """The figure of that name; FigureInputError with the nearest names where there is none."""
    figures = all_figures()
    if name not in figures:
        hint = nearest(name, list(figures)) or "; `advisor list figures` prints them"
        raise FigureInputError("figure", name, f"the name of a figure{hint}")
    return figures[name]


def reckon(name: str, words: Mapping[str, str]) -> Figure:
    """One figure from texts such as `diameter` -> `3/4in`.

    Raises FigureInputError: no such figure, unknown or missing input, unit or number not understood, out of bounds.
    """
    formula = find_figure(name)
    known = formula.inputs
    for key, text in words.items():
        if key not in known:
            accepted = f"inputs of {name}: {', '.join(known)}{nearest(key, list(known))}"
            raise FigureInputError(key, text, accepted)
    for key, entry in known.items():
        if entry.required and key not in words:
            raise FigureInputError(key, None, entry.accepted)
    answer = formula.figure(**{key: known[key].read(text) for key, text in words.items()})
    for key, entry in known.items():
        if entry.unit is not None and entry.unit.shape == "given":
            value, unit = split_given(key, words[key])
            answer = replace(answer, unit=unit, inputs={**answer.inputs, key: (value, unit)})
    return answer
