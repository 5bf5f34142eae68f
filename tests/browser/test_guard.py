"""The page of these tests sees what it should see and notices what it should notice."""

import pytest
from playwright.sync_api import Page

pytestmark = [pytest.mark.slow, pytest.mark.browser]


def test_a_page_is_measured(page: Page) -> None:
    page.set_content("<p style='width:100px;overflow:hidden;white-space:nowrap'>" + "x" * 99 + "</p>")
    assert page.evaluate("(p => p.scrollWidth > p.clientWidth)(document.querySelector('p'))")
