"""Whatever stands in a case stays text on the sheet: markup, formulas, long words, other scripts, towers of accents."""

from __future__ import annotations

import re
from xml.etree import ElementTree

import pytest

from advisor.report.sheet.as_html import sheet_html
from advisor.report.sheet.as_pdf import sheet_pdf
from advisor.report.sheet.as_svg import sheet_svg
from advisor.report.sheet.clean import breakable, clean
from advisor.report.sheet.flow import lay_out
from advisor.report.sheet.page import Page
from tests.report.sheets import WHEN, case_of, laid, pdf_text

SVG = "{http://www.w3.org/2000/svg}"
NASTY = [
    "</title></text><script>alert(1)</script>",
    "\" onload='x' <img src=x> & &amp; ]]> <!-- -->",
    '#panic(1) $x^2$ *bold* _it_ @ref <label> \\ `raw` #read("/etc/passwd")',
    "${7*7} {{7*7}} {% raw %} %s %(x)s",
    "W" * 100,
    "i" * 100,
    "שלום עולם",
    "Ä ö ß Ω ж — “quoted” ½ Ø",
]
FOREIGN = ["مرحبا بالعالم", "漢字仮名交じり文", "😀🪵🌀", "Z" + "\u0301" * 90, "\ufdfd" * 20]
MARKUP = re.compile(r"https?:[^\s\"'<]*")


BARE = Page("", "", "do-not-mount", "DO NOT MOUNT.", "", "", (), (), (), None, (), "foot", "metric")


@pytest.mark.parametrize("name", [*NASTY, *FOREIGN])
def test_markup_stays_text_in_svg_and_html(name: str) -> None:
    page = lay_out(BARE._replace(name=clean(name)))
    svg = ElementTree.fromstring(sheet_svg([page]))
    html = ElementTree.fromstring(sheet_html([page]).partition("\n")[2])
    assert not [element for root in (svg, html) for element in root.iter() if element.tag.endswith("script")]
    assert not [
        key for root in (svg, html) for element in root.iter() for key in element.attrib if key.startswith("on")
    ]
    assert svg.findtext(f"{SVG}title") == html.findtext("head/title") == clean(name)
    assert (
        "".join(text.text or "" for text in svg.iter(f"{SVG}text"))
        .replace(" ", "")
        .startswith(clean(name).replace(" ", ""))
    )


@pytest.mark.parametrize("name", NASTY)
def test_markup_stays_text_in_the_pdf(name: str) -> None:
    text = pdf_text(sheet_pdf([lay_out(BARE._replace(name=clean(name)))], WHEN))
    signs = {sign for sign in clean(name) if sign.isascii() and not sign.isspace()}
    assert signs <= set(text)
    if name.isascii() and "`" not in name:
        squeezed = text.replace(" ", "").replace("’", "'")
        assert clean(name).replace(" ", "") in squeezed


@pytest.mark.parametrize("name", FOREIGN)
def test_signs_without_a_font_still_give_a_page(name: str) -> None:
    page = lay_out(BARE._replace(name=clean(name)))
    assert "DO NOT MOUNT." in pdf_text(sheet_pdf([page], WHEN))


def test_markup_in_the_material_stays_text_everywhere() -> None:
    case = case_of("cracked", "work.material=<script>#panic(1)</script>")
    page, answer = laid(case)
    assert "<script>" in str(answer)
    assert "<script>" not in sheet_html([page]) + sheet_svg([page])
    assert "#panic(1)" in pdf_text(sheet_pdf([page], WHEN))


@pytest.mark.parametrize("name", ["spindle", "cracked"])
def test_no_file_names_an_outside_address(name: str) -> None:
    page, _ = laid(case_of(name))
    for text in (sheet_svg([page]), sheet_html([page])):
        assert set(MARKUP.findall(text)) == {"http://www.w3.org/2000/svg"}
        assert not re.search(r"url\(|@import|src=|href=", text)


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("a\nb\t c", "a b c"),
        ("zero\u200bwidth \u202eturned", "zero�width �turned"),
        ("e\u0301\u0301\u0301\u0301x", "e\u0301\u0301x"),
        ("\x00\x1b[31m", "��[31m"),
        ("\ud800", "�"),
    ],
)
def test_invisible_signs_become_visible(text: str, kept: str) -> None:
    assert clean(text) == kept


def test_long_words_get_places_to_break_and_nothing_else() -> None:
    assert breakable("short words only") == "short words only"
    broken = breakable("x" * 50, 18)
    assert broken.replace("\u200b", "") == "x" * 50
    assert max(map(len, broken.split("\u200b"))) == 18
    assert breakable("hold.drive.inner_diameter") == "hold.\u200bdrive.\u200binner_\u200bdiameter"
