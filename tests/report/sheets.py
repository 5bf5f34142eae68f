"""Sheets for the tests: from a case to the page, and from a file back to its words."""

from __future__ import annotations

import io
import re
from datetime import date
from pathlib import Path
from typing import Any

from pypdf import PdfReader

from advisor.advice.whole import answer_for
from advisor.cli import ANSWER_PARTS
from advisor.models.case import Case
from advisor.reading import read_case
from advisor.report.sheet.compose import page_of
from advisor.report.sheet.flow import Laid, lay_out

ROOT = Path(__file__).parent.parent.parent
CASES = {
    "spindle": "maple-spindle.yaml",
    "faceplate": "wet-ash-faceplate.yaml",
    "cracked": "cracked-log.yaml",
    "three-jaw": "rod-in-three-jaw.yaml",
    "platter": "platter-in-recess.toml",
    "no window": "thin-beech-no-window.toml",
}
WHEN = date(2026, 9, 21)


def case_of(name: str, *words: str) -> Case:
    return read_case(str(ROOT / "cases" / CASES[name]), list(words))


def answer_of(case: Case) -> dict[str, Any]:
    return answer_for(case, ANSWER_PARTS["advise"], changes=False)


def laid(case: Case, units: str = "metric", name: str | None = None) -> tuple[Laid, dict[str, Any]]:
    """The laid out page of a case, and the answer it shows."""
    answer = answer_of(case)
    return lay_out(page_of(case, answer, name or case.title or "piece", units, "2026-09-21")), answer


def pdf_text(data: bytes, page: int = 0) -> str:
    """The words of a page, without the invisible places to break."""
    text = PdfReader(io.BytesIO(data)).pages[page].extract_text()
    return re.sub(r"\s+", " ", text.replace("\u200b", ""))
