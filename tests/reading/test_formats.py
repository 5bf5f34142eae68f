"""One case in three formats, and everything a format can do that a case cannot."""

import pytest

from advisor.reading import read_text
from advisor.reading.files import Format
from tests.reading.texts import GOOD_YAML, only, problems

YAML = """\
# a comment
title: "ash: a bowl # one"
units: metric
work:
  material: white ash
  form: disc
  diameter: 1-1/2"
  length: 38
  moisture: 12%
  raw: no
  one_side_wet: Yes
  grain_slope: 1:30
  radii: [3/4", 19 mm, 19, 19.05, 0.75 in, 3/4 in]
  profile: [0 mm: 38 mm, 10mm:38mm, [20, 1 in]]
  balance_test: {weight: 50 g, radius: 4 in}
  condition:
    - check
    - pith
machine:
  speeds: [500, 770 rpm]
  spindle_taper: 2
hold:
  kit: []
  tail:
cut:
"""
TOML = """\
title = "ash: a bowl # one"
units = "metric"
[work]
material = 'white ash'
form = "disc"
diameter = '1-1/2"'
length = 38
moisture = "12%"
raw = false
one_side_wet = "Yes"
grain_slope = "1:30"
radii = ['3/4"', "19 mm", 19, 19.05, "0.75 in", "3/4 in"]
profile = ["0 mm:38 mm", "10mm:38mm", [20, "1 in"]]
balance_test = {weight = "50 g", radius = "4 in"}
condition = [
  "check",
  "pith",
]
[machine]
speeds = [500, "770 rpm"]
spindle_taper = 2
[hold]
kit = []
[hold.tail]
"""
JSON = """\
{
  "title": "ash: a bowl # one",
  "units": "metric",
  "work": {
    "material": "white \\u0061sh", "form": "disc", "diameter": "1-1/2\\"", "length": 38, "moisture": "12%",
    "raw": false, "one_side_wet": "Yes", "grain_slope": "1:30",
    "radii": ["3/4\\"", "19 mm", 19, 19.05, "0.75 in", "3/4 in"],
    "profile": [{"0 mm": "38 mm"}, "10mm:38mm", [2e1, "1 in"]],
    "balance_test": {"weight": "50 g", "radius": "4 in"},
    "condition": ["check", "pith"]
  },
  "machine": {"speeds": [500, "770 rpm"], "spindle_taper": 2},
  "hold": {"kit": [], "tail": {}}, "cut": null
}
"""


@pytest.mark.parametrize(("text", "format_"), [(YAML, "yaml"), (TOML, "toml"), (JSON, "json")])
def test_a_case_reads_alike_in_every_format(text: str, format_: Format) -> None:
    case = read_text(text, format_, "case")
    work = case.work
    assert case.title == "ash: a bowl # one"
    assert work.material == "white ash"
    assert work.diameter == 38.1
    assert work.length == 38
    assert work.moisture == 12
    assert (work.raw, work.one_side_wet) == (False, True)
    assert work.grain_slope == 30
    assert work.radii == (19.05, 19, 19, 19.05, 19.05, 19.05)
    assert work.profile == ((0, 38), (10, 38), (20, 25.4))
    assert work.balance_test is not None
    assert (work.balance_test.weight, work.balance_test.radius) == (0.05, 101.6)
    assert work.condition == ("check", "pith")
    assert case.machine.speeds == (500, 770)
    assert case.machine.spindle_taper == 2
    assert case.hold.kit == ()
    assert case.hold.tail is not None


@pytest.mark.parametrize(("text", "format_"), [(YAML, "yaml"), (TOML, "toml"), (JSON, "json")])
@pytest.mark.parametrize("ends", ["\r\n", "\r", "\n"])
@pytest.mark.parametrize("mark", ["", "\ufeff"])
def test_line_ends_and_a_mark_at_the_start_make_no_difference(text: str, format_: Format, ends: str, mark: str) -> None:
    assert read_text(mark + text.replace("\n", ends), format_, "case") == read_text(text, format_, "case")


WRONG_YAML = [
    ("work: &here {}", 1, 7, "'&here' is an anchor; accepted: the value without it"),
    ("work: *here", 1, 7, "'*here' is an alias; accepted: the value itself, written out"),
    ("work:\n  <<: {}", 2, 3, "'<<' is a merge key; accepted: the fields themselves, written out"),
    ("work: !!map {}", 1, 7, "'tag:yaml.org,2002:map' is a tag; accepted: the value without it"),
    ("title: !x y", 1, 8, "'!x' is a tag; accepted: the value without it"),
    ("title: a\n---\ntitle: b", 2, 1, "a second document starts here; accepted: one case in a file"),
    ("? [a]\n: b", 1, 3, "a list or fields stand where the name of a field belongs"),
    ("work: {a: 1", 1, 12, "is not YAML: expected ',' or '}', but got '<stream end>'"),
    ("title: a: b", 1, 9, "is not YAML: mapping values are not allowed here"),
    ("a:\n\t- b", 2, 1, "is not YAML: found character '\\t' that cannot start any token"),
    ("[" * 13, 1, 13, "goes too deep; accepted: at most 12 levels"),
    ("- a", 1, 1, "is no case; accepted: fields: title, units, work, machine, hold, cut, person"),
    ("ash", 1, 1, "'ash' is no case; accepted: fields: title"),
    ("# nothing", None, None, "is no case; accepted: fields: title"),
    ("a: \x07", None, None, "is not YAML: it holds characters that no text has"),
    ('a: "\\U00110000"', None, None, "is not YAML"),
    ('a: "\\U90110000"', None, None, "is not YAML: it holds characters that no text has"),
]
WRONG_TOML = [
    ("title = 'a'\ntitle = 'b'", 2, 12, "is not TOML: Cannot overwrite a value"),
    ("[work]\n[work]", 2, 6, "is not TOML: Cannot declare ('work',) twice"),
    ("title = ", 1, 9, "is not TOML: Invalid value"),
    ("[work]\nwall = 0x" + "F" * 5000, 2, 8, "is not TOML: it holds a value that cannot be read"),
    ("a = " + "[" * 3000, None, None, "goes too deep; accepted: at most 12 levels"),
    ("a = " + "[" * 14 + "]" * 14, 1, 5, "goes too deep; accepted: at most 12 levels"),
    ("a = " + "1" * 5000, None, None, "is not TOML"),
]
WRONG_JSON = [
    ('{"title": "a",}', 1, 15, "'}' is not JSON here; accepted: a text in double quotes, closed on its line"),
    ("{'title': 1}", 1, 2, "is not JSON here; accepted: a text in double quotes"),
    ('{"title": NaN}', 1, 11, "'NaN}' is not JSON here; accepted: a text in double quotes, a number, true, false"),
    ('{"title": 01}', 1, 12, "'1}' is not JSON here; accepted: , or }"),
    ('{"title" "a"}', 1, 10, "is not JSON here; accepted: :"),
    ('{"title": "a"', 1, 14, "'the end of the text' is not JSON here; accepted: , or }"),
    ('{"title": "a\nb"}', 1, 11, "is not JSON here; accepted: a text in double quotes, closed on its line"),
    ('{"title": [1X', 1, 13, "'X' is not JSON here; accepted: , or ]"),
    ('{"title": "a"}\n{}', 2, 1, "'{}' is not JSON here; accepted: nothing more: one case in a file"),
    ("[" * 14, 1, 14, "goes too deep; accepted: at most 12 levels"),
    ("[1]", 1, 1, "is no case; accepted: fields: title"),
    ('"ash"', 1, 1, "'ash' is no case"),
    ("null", 1, 1, "is no case"),
]
WRONG = [
    *[("yaml", *row) for row in WRONG_YAML],
    *[("toml", *row) for row in WRONG_TOML],
    *[("json", *row) for row in WRONG_JSON],
]


@pytest.mark.parametrize(("format_", "text", "line", "column", "message"), WRONG, ids=[row[-1][:40] for row in WRONG])
def test_a_text_that_is_no_case_says_where_and_why(
    format_: Format, text: str, line: int | None, column: int | None, message: str
) -> None:
    found = only(problems(text, format_, "my case"))
    assert (found.file, found.line, found.column) == ("my case", line, column)
    assert message in str(found)
    assert found.accepted


@pytest.mark.parametrize(
    ("format_", "text", "line", "column"),
    [
        ("yaml", GOOD_YAML + "  form: disc\n  form: ring\n", 8, 3),
        (
            "json",
            '{"work": {"material": "ash", "form": "disc", "diameter": "1 in", "length": "1 in", "form": 1}}',
            1,
            84,
        ),
    ],
)
def test_a_field_given_twice_is_refused(format_: Format, text: str, line: int, column: int) -> None:
    found = only(problems(text, format_))
    assert (found.line, found.column, found.field) == (line, column, "work.form")
    assert found.message == "is given twice"


TOML_PLACES = """\
title = "x"
units = "inch"
hold = { method = "colet", tail = {kind = "live"} }
machine.min_rpm = "fast"
[ work ]
"material" = "ash"
diameter = "10 parsec"
length = 3
radii = ["1", "2", "3", "4",
   "five", "6"]
[work.balance_test]
weight = "5 g"
"""


def test_toml_errors_name_line_and_column() -> None:
    found = {problem.field: (problem.line, problem.column) for problem in problems(TOML_PLACES, "toml")}
    assert found == {
        "hold.method": (3, 19),
        "hold.tail.kind": (3, 35),
        "machine.min_rpm": (4, 19),
        "work.diameter": (7, 12),
        "work.radii": (9, 9),
        "work.balance_test.radius": (11, 2),
    }


def test_json_and_yaml_errors_name_line_and_column() -> None:
    text = '{"work": {"material": "ash",\n  "diameter": 10, "length": "3 in"}}'
    for format_ in ("json", "yaml"):
        found = only(problems(text, format_))
        assert (found.line, found.column, found.field, found.value) == (2, 15, "work.diameter", "10")


@pytest.mark.parametrize("format_", ["yaml", "toml", "json"])
@pytest.mark.parametrize("text", ["", " \n\n", "\ufeff"])
def test_an_empty_text_is_refused(text: str, format_: Format) -> None:
    assert only(problems(text, format_)).message == "is empty"


def test_native_values_are_what_was_typed() -> None:
    assert problems('{"work": {"material": 12, "diameter": "1 in", "length": "1 in"}}', "json") == []
    toml = 'work = {material = "ash", diameter = inf, length = 1979-05-27}\nunits = "inch"'
    assert {problem.value for problem in problems(toml, "toml")} == {"inf", "1979-05-27"}
    yaml = "units: inch\nwork: {material: no, diameter: 0x10, length: 1:30}"
    assert {problem.value for problem in problems(yaml)} == {"0x10", "1:30"}
