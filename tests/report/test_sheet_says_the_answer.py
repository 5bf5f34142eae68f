"""The sheet says what the answer says: numbers read back out of the PDF, rounded to the safe side."""

from __future__ import annotations

import io
import re
from typing import Any

import pytest
from pypdf import PdfReader

from advisor.report.sheet.as_html import sheet_html
from advisor.report.sheet.as_pdf import sheet_pdf
from advisor.report.sheet.as_svg import sheet_svg
from tests.report.sheets import CASES, WHEN, case_of, laid, pdf_text

NEWTONS_PER_POUND = 4.4482216
QUICK = ("spindle", "cracked", "no window")
HEADS = {"go": "GO.", "go-with-care": "GO, WITH CARE.", "ask-first": "ASK FIRST.", "do-not-mount": "DO NOT MOUNT."}


MORE = [pytest.param(name, marks=[pytest.mark.slow, pytest.mark.cases]) for name in CASES if name not in QUICK]


@pytest.fixture(scope="module", params=[*QUICK, *MORE])
def read(request: pytest.FixtureRequest) -> tuple[str, dict[str, Any], bytes]:
    """Words of the PDF, the answer, the file."""
    page, answer = laid(case_of(request.param))
    data = sheet_pdf([page], WHEN)
    return pdf_text(data), answer, data


def below(shown: float, exact: float) -> bool:
    """Two figures, never above."""
    return exact * 0.9 <= shown <= exact * (1 + 1e-9)


def above(shown: float, exact: float) -> bool:
    """Two figures, never below."""
    return exact * (1 - 1e-9) <= shown <= exact * 1.1


def test_verdict_and_reason(read: tuple[str, dict[str, Any], bytes]) -> None:
    text, answer, _ = read
    assert HEADS[answer["verdict"]] in text
    for reason in answer["reasons"]:
        assert reason["text"] in text


def test_start_and_ceiling(read: tuple[str, dict[str, Any], bytes]) -> None:
    text, answer, _ = read
    found = re.search(r"START AT (\d+) ?rpm.*?NEVER ABOVE (\d+) ?rpm", text)
    if answer["verdict"] == "do-not-mount":
        assert found is None
        assert "NEVER ABOVE" not in text
        return
    assert found is not None
    assert below(float(found[1]), answer["speed"]["start_rpm"])
    assert below(float(found[2]), answer["speed"]["ceiling_rpm"])
    assert f"{answer['speed']['governed_by']} decides" in text


def test_thrust(read: tuple[str, dict[str, Any], bytes]) -> None:
    text, answer, _ = read
    found = re.search(r"THRUST set (\d+) N \((\d+) lbf\).*?at most (\d+) N", text)
    if answer["verdict"] == "do-not-mount":
        assert "THRUST" not in text
    elif "set_n" in answer["thrust"]:
        assert found is not None
        assert above(float(found[1]), answer["thrust"]["set_n"])
        assert above(float(found[2]) * NEWTONS_PER_POUND, answer["thrust"]["set_n"])
        assert below(float(found[3]), answer["thrust"]["allowed_n"])
    else:
        assert found is None
        assert "no safe thrust" in text


def test_hold_checks_cautions_assumptions_and_gaps(read: tuple[str, dict[str, Any], bytes]) -> None:
    text, answer, _ = read
    refused = answer["verdict"] == "do-not-mount"
    said = [entry["text"] for entry in answer["cautions"]]
    said += [f"{entry['field']} = {entry['value']}" for entry in answer["assumed"]]
    said += [entry["what"] for entry in answer["could_not_check"]]
    said += [] if refused else [*answer["checks"], *answer["notes"], answer["tool"]["kind"]]
    squeezed = text.replace(" ", "")  # a long word may stand on two lines
    assert [entry for entry in said if "".join(entry.split()) not in squeezed] == []
    for limit in answer["speed"]["limits"][:1]:
        assert limit["name"] in text


def test_every_step_and_rung_of_the_way_up(read: tuple[str, dict[str, Any], bytes]) -> None:
    text, answer, _ = read
    for step in answer["speed"].get("steps", []):
        shown = re.search(re.escape(step["when"]) + r" (\d+) rpm", text)
        assert shown is not None
        assert below(float(shown[1]), step["rpm"])
    ladder = answer["speed"].get("ladder", [])
    rungs = re.findall(r"[\d.]+ mm (\d+) rpm", text) if len(ladder) > 1 else []
    assert len(rungs) == (len(ladder) if len(ladder) > 1 else 0)
    assert all(below(float(rung), row["ceiling_rpm"]) for rung, row in zip(rungs, ladder, strict=False))


def test_the_pdf_is_one_tagged_page_with_words_for_its_pictures(read: tuple[str, dict[str, Any], bytes]) -> None:
    _, answer, data = read
    reader = PdfReader(io.BytesIO(data))
    assert len(reader.pages) == 1
    root: Any = reader.trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"]
    assert root["/Lang"] == "en"
    alternatives = list(_alternatives(root["/StructTreeRoot"]))
    assert any(text.startswith("Drawing to scale: ") for text in alternatives)
    assert any(text.startswith("Chart of the limits on speed") for text in alternatives) == bool(
        answer["speed"]["limits"]
    )


def _alternatives(node: Any) -> list[str]:
    node = node.get_object() if hasattr(node, "get_object") else node
    if isinstance(node, list):
        return [text for child in node for text in _alternatives(child)]
    if not isinstance(node, dict):
        return []
    own = [str(node["/Alt"])] if "/Alt" in node else []
    return own + (_alternatives(node["/K"]) if "/K" in node else [])


@pytest.mark.parametrize("name", ["spindle"])
def test_all_three_files_say_the_same(name: str) -> None:
    page, _ = laid(case_of(name), "inch")
    files = {"html": sheet_html([page]), "svg": sheet_svg([page]), "pdf": pdf_text(sheet_pdf([page], WHEN))}
    assert page.page.headline == HEADS[page.page.verdict]
    for kind, text in files.items():
        for big in (*page.page.speeds, *page.page.hold):
            assert big.value.split()[0] in text, kind
        assert page.page.headline in text, kind
        assert "2026-09-21" in text, kind
        assert page.page.foot.split(".")[0] in text, kind


@pytest.mark.parametrize("units", ["inch", "metric"])
def test_units_are_those_asked_for(units: str) -> None:
    text = sheet_svg([laid(case_of("spindle"), units)[0]])
    assert ("18 in<" in text) == (units == "inch")
    assert ("457 mm<" in text) == (units == "metric")


def test_no_meaning_by_color_alone() -> None:
    """Verdicts differ in words and in the width or dashes of the frame; all else is black, gray or white."""
    frames = set()
    for name in ("spindle", "faceplate", "cracked", "three-jaw"):
        text = sheet_svg([laid(case_of(name))[0]])
        colors = set(re.findall(r"#[0-9a-f]{3,6}\b", text))
        gray = {
            color for color in colors if len(set(re.findall(r"..", color[1:]) if len(color) > 4 else color[1:])) == 1
        }
        assert len(colors - gray) == 1
        frame = re.search(r"stroke='#(?!000|fff)\w+' stroke-width='([\d.]+)'( stroke-dasharray='[^']+')?", text)
        assert frame is not None
        frames.add(frame.groups())
    assert len(frames) == 4
