"""The list of what nobody said."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import NamedTuple


class Assumption(NamedTuple):
    """One value that the program supplied, as it appears under `assumed`."""

    field: str
    value: str
    why: str


@dataclass
class Ledger:
    """Collects assumptions and gaps while a situation is settled, each field once."""

    assumed: list[Assumption] = field(default_factory=list)
    gaps: list[tuple[str, str]] = field(default_factory=list)

    def assume(self, name: str, value: str, why: str) -> None:
        """Note that `name` was silent and stands at `value`."""
        if all(known.field != name for known in self.assumed):
            self.assumed.append(Assumption(name, value, why))

    def miss(self, what: str, missing: str) -> None:
        """Note that `what` could not be checked because `missing` is not known."""
        if (what, missing) not in self.gaps:
            self.gaps.append((what, missing))
