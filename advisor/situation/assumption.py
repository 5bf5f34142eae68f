"""The list of what nobody said."""

from typing import NamedTuple


class Assumption(NamedTuple):
    """One value that the program supplied, as it appears under `assumed`."""

    field: str
    value: str
    why: str


class Ledger:
    """Collects assumptions and gaps while a situation is settled, each field once."""

    def __init__(self) -> None:
        self.assumed: list[Assumption] = []
        self.gaps: list[tuple[str, str]] = []

    def assume(self, name: str, value: str, why: str) -> None:
        """Note that `name` was silent and stands at `value`."""
        if all(known.field != name for known in self.assumed):
            self.assumed.append(Assumption(name, value, why))

    def miss(self, what: str, missing: str) -> None:
        """Note that `what` could not be checked because `missing` is not known."""
        if (what, missing) not in self.gaps:
            self.gaps.append((what, missing))
