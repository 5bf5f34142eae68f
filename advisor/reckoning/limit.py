"""One limit on speed or thrust, with where it comes from."""

from collections.abc import Iterable
from typing import Any, NamedTuple

from advisor.figure import Figure
from advisor.sources import source


class Limit(NamedTuple):
    """`value` in rpm or N; `text` or the figure's worked line says how it was found; `why` is the plain reason.

    The worked line is built only when somebody reads it.
    """

    name: str
    value: float
    grade: str
    sources: tuple[str, ...]
    why: str = ""
    text: str = ""
    figure: Figure | None = None
    share: float = 1.0

    @property
    def formula(self) -> str:
        """The formula with the numbers in it."""
        if self.figure is None:
            return self.text
        worked = self.figure.worked
        if self.share != 1.0:
            worked = f"{self.share:.3g} × ({worked})"
        return f"{worked}; {self.text}" if self.text else worked

    def as_dict(self, unit: str) -> dict[str, Any]:
        """The limit as it stands in the answer, its value under `rpm` or `n`."""
        return {
            "name": self.name,
            unit: self.value,
            "grade": self.grade,
            "formula": self.formula,
            "source": "; ".join(source(key).title for key in self.sources),
            "why": self.why,
        }


def from_figure(name: str, figure: Figure, share: float = 1.0, why: str = "", text: str = "") -> Limit | None:
    """A limit that is a figure's value times a share; None where the figure has no answer."""
    if figure.value is None:
        return None
    return Limit(name, figure.value * share, figure.grade, figure.sources, why, text, figure, share)


def smallest(limits: Iterable[Limit]) -> tuple[Limit, Limit | None]:
    """The governing limit and the runner-up."""
    ordered = sorted(limits, key=lambda limit: limit.value)
    return ordered[0], ordered[1] if len(ordered) > 1 else None
