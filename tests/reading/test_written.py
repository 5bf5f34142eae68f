"""What a written case looks like to another reader of YAML, and the edges of what a stream and a quote may hold."""

import io
from typing import TextIO

import pytest
import yaml

from advisor.reading import InputFault, read_text, write_case
from advisor.reading.files import LARGEST, text_of_file, text_of_stream
from advisor.reading.problems import harmless, quote

CASE = r"""
title: "a \"true\" bowl, back\\slash"
work:
  material: white ash
  diameter: 10 in
  length: 3 in
  moisture: 12 %
  grain_slope: 1:12
  raw: yes
  tested: no
  condition: [check, knot]
  radii: [120 mm, 121 mm, 122.5 mm, 121 mm, 120 mm, 119 mm]
  profile: ["0 mm:40 mm", "70 mm:30.5 mm"]
  parts: [ash, "a \"dyed\" veneer"]
machine:
  spindle_taper: 2
  speeds: [500 rpm, 1200 rpm]
hold:
  method: faceplate-screws
  drive: {}
"""
OTHER_READER = {
    "title": 'a "true" bowl, back\\slash',
    "work": {
        "material": "white ash",
        "diameter": "254 mm",
        "length": "76.2 mm",
        "moisture": "12%",
        "grain_slope": "1:12",
        "raw": "yes",
        "tested": "no",
        "condition": ["check", "knot"],
        "radii": ["120 mm", "121 mm", "122.5 mm", "121 mm", "120 mm", "119 mm"],
        "profile": ["0 mm:40 mm", "70 mm:30.5 mm"],
        "parts": ["ash", 'a "dyed" veneer'],
    },
    "machine": {"spindle_taper": "2", "speeds": ["500 rpm", "1200 rpm"]},
    "hold": {"method": "faceplate-screws", "drive": {}},
}


def test_another_reader_finds_every_value() -> None:
    found = yaml.load(write_case(read_text(CASE, "yaml", "case.yaml")), Loader=yaml.BaseLoader)
    assert found == OTHER_READER


def tagged(length: int) -> str:
    """A case that a comment makes as long as that."""
    text = '{"work": {"material": "ash", "diameter": "10 in", "length": "3 in"}}'
    return text + " " * (length - len(text))


@pytest.mark.parametrize("wrapped", [False, True])
def test_a_stream_may_hold_as_much_as_a_case_and_not_a_byte_more(wrapped: bool) -> None:
    def stream(text: str) -> TextIO:
        return io.TextIOWrapper(io.BytesIO(text.encode())) if wrapped else io.StringIO(text)

    assert text_of_stream(stream(tagged(LARGEST))) == (tagged(LARGEST), "json")
    with pytest.raises(InputFault, match="too large"):
        text_of_stream(stream(tagged(LARGEST + 1)))


class Endless(io.BytesIO):
    """A source that never ends and tells how much was asked of it."""

    asked = 0

    def read(self, size: int | None = -1, /) -> bytes:
        assert size is not None
        assert size >= 0, "all of it was asked for"
        self.asked += size
        return b" " * size


def test_no_more_is_read_than_must_be_to_know_that_it_is_too_much() -> None:
    source = Endless()
    with pytest.raises(InputFault, match=f"at most {LARGEST // 1024} kB"):
        text_of_stream(io.TextIOWrapper(source))
    assert source.asked == LARGEST + 1


@pytest.mark.parametrize(
    ("text", "format_"),
    [
        ('{"work": 1}', "json"),
        ('\n  {"work": 1}', "json"),
        ("work: {}", "yaml"),
        ("[work]\n", "toml"),
        ("# said\n\n title = 'x'", "toml"),
        ("work:\n  material: a = b", "yaml"),
    ],
)
def test_first_signs_tell_the_format(text: str, format_: str) -> None:
    assert text_of_stream(io.StringIO(text)) == (text, format_)


def test_what_is_wanted_is_always_said(tmp_path: object) -> None:
    wanted = "a case file that ends in .yaml, .toml or .json"
    for path in (f"{tmp_path}", f"{tmp_path}/none.yaml", f"{tmp_path}/a\0b.yaml", f"{tmp_path}/none/none.yaml"):
        with pytest.raises(InputFault) as refused:
            text_of_file(path)
        (problem,) = refused.value.problems
        assert (problem.file, problem.accepted) == (path, wanted)
    with pytest.raises(InputFault) as refused:
        text_of_stream(io.StringIO("\ud800"))
    assert refused.value.problems[0].accepted == "a case as text"


def test_quote_is_cut_to_sixty_signs() -> None:
    assert quote("x" * 60) == "'" + "x" * 60 + "'"
    assert quote("x" * 61) == "'" + "x" * 59 + "…'"
    assert quote("a\tb") == "'a\\tb'"
    assert harmless("\x1b[2J") == "\\x1b[2J"
