"""The words of a verdict and which of two is worse."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

MOUNT = ("go", "go-with-care", "ask-first", "do-not-mount")
HOLD = ("suits", "with-care", "could-not-check", "not-advised", "refused")


def worst(order: Sequence[str], found: Iterable[str]) -> str:
    """The worst of the verdicts found, the best there is when none spoke."""
    return order[max((order.index(word) for word in found), default=0)]
