"""Debian's Chromium for the tests that look at a page. Every test here is marked `slow` and `browser`.

No page may ask for anything outside this machine or throw an error: both fail the test that opened it.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Browser, Page, Route, sync_playwright

CHROMIUM = Path("/usr/bin/chromium")
QUIET = [
    "--no-sandbox",  # root, as in a container
    "--disable-gpu",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
]
HERE = ("127.0.0.1", "localhost", "")  # a file, a data URL and a blob have no host


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """One browser for all tests of a worker."""
    if not CHROMIUM.exists():
        pytest.fail(f"{CHROMIUM} is missing: apt-get install -y chromium")
    with sync_playwright() as driver:
        started = driver.chromium.launch(executable_path=str(CHROMIUM), args=QUIET)
        yield started
        started.close()


@pytest.fixture
def page(browser: Browser) -> Iterator[Page]:
    """A fresh page with nothing remembered."""
    context = browser.new_context()
    outside: list[str] = []
    faults: list[str] = []

    def guard(route: Route) -> None:
        address = route.request.url
        if (urlsplit(address).hostname or "") in HERE:
            route.continue_()
        else:
            outside.append(address)
            route.abort()

    context.route("**/*", guard)
    opened = context.new_page()
    opened.on("pageerror", lambda error: faults.append(str(error)))
    yield opened
    context.close()
    assert not outside, f"asked for an outside address: {outside}"
    assert not faults, f"threw in the page: {faults}"
