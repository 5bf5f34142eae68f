"""The page in this process over one worker, for the tests of this folder."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from advisor.web.app import build
from advisor.web.guards import own_hosts
from advisor.web.workers import Pool
from tests.web.asking import PORT, Asking


@pytest.fixture(scope="session")
def client() -> Iterator[Asking]:
    """A program on this machine that asks the page."""
    pool = Pool(1)
    with Asking(build(pool, own_hosts(PORT)), pool) as opened:
        yield opened
