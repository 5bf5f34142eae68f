"""The page through its addresses: form, answer, errors beside their fields, downloads, explanations."""

from __future__ import annotations

import json
import re
from html import unescape
from typing import Any

import pytest

from advisor.advice import whole
from advisor.advice.whole import answer_for
from advisor.quantity import FigureInputError
from advisor.reading import read_case, read_text
from advisor.web import app, pages, worker
from tests.web.asking import Asking

LEG = {
    "work.material": "sugar maple", "work.form": "square", "work.diameter": "3 in", "work.length": "18 in",
    "work.moisture": "9%", "machine.kind": "metal-lathe", "machine.mass": "1500 lb", "units": "inch",
}  # fmt: skip
WORDS = [f"{name}={value}" for name, value in LEG.items()]
TWICE = b'{"work": {"material": "ash", "diameter": "3 in", "length": "4 in", "length": "5 in"}}'
PARTS = ("holding", "speed", "thrust", "centers", "tool")


@pytest.fixture(scope="module")
def answer() -> dict[str, Any]:
    return answer_for(read_case(None, WORDS), PARTS)


def text_of(html: str) -> str:
    return re.sub(r"\s+", " ", unescape(re.sub(r"<[^>]+>", " ", html)))


def beside(html: str, name: str) -> str:
    """What is said beside a field, empty while it is hidden."""
    found = re.search(rf'<p class="error" id="wrong-{re.escape(name)}"\s*([^>]*)>(.*?)</p>', html, re.DOTALL)
    assert found is not None
    return "" if "hidden" in found[1] else unescape(found[2])


def test_a_fresh_page_says_what_it_needs(client: Asking) -> None:
    page = client.get("/")
    assert page.status_code == 200
    assert "Name the material, the largest diameter and the length." in page.text


def test_a_form_gets_the_answer_of_the_command(client: Asking, answer: dict[str, Any]) -> None:
    page = client.post("/", data=LEG)
    assert page.status_code == 200
    told = text_of(page.text)
    assert "GO, WITH CARE." in told
    assert answer["reasons"][0]["text"] in told
    for entry in (*answer["cautions"], *answer["speed"]["limits"]):
        assert entry.get("text", entry.get("formula")) in told
    for text in (*answer["checks"], *answer["notes"]):
        assert text in told


def test_every_limit_tells_its_formula_grade_and_source(client: Asking, answer: dict[str, Any]) -> None:
    told = text_of(client.post("/", data=LEG).text)
    limits = [*answer["speed"]["limits"], *answer["thrust"]["limits"]]
    assert len(limits) > 8
    for limit in limits:
        grade = limit["grade"].replace("-", " ")
        assert f"{limit['formula']} Grade: {grade}. Source: {limit['source']}." in told


def test_every_large_number_has_its_why(client: Asking) -> None:
    page = client.post("/", data=LEG).text
    keys = set(re.findall(r'<details class="why" data-key="([^"]+)">', page))
    assert {"start", "ceiling", "set", "allowed", "energy", "rim"} <= keys
    assert re.search(r"W = ¼·m\S+ = .*76\.2 mm", text_of(page))


def test_what_was_typed_stands_in_the_form_again(client: Asking) -> None:
    page = client.post("/", data=LEG).text
    assert 'value="sugar maple"' in page
    assert '<option value="square" selected>' in page


def test_an_address_holds_a_whole_question(client: Asking) -> None:
    assert text_of(client.get("/", params=LEG).text) == text_of(client.post("/", data=LEG).text)


@pytest.mark.parametrize(
    ("field", "value", "said"),
    [
        ("work.diameter", "3", "Has no unit: write 3 in or 3 mm"),
        ("work.diameter", "3 lb", "Accepted: from 1 mm to 3000 mm"),
        ("work.length", "-4 in", "Accepted: from 1 mm"),
        ("work.length", "9" * 400 + " in", "Is too long for a quantity"),
        ("work.form", "sqare", "Did you mean square?"),
        ("work.radii", "40 mm, 41 mm", "Has 2 entries"),
        ("work.parts", "[a, b", "Cannot be read: brackets open and close, commas between"),
        ("work.finished_diameter", "4 in", "work.finished_diameter is larger than work.diameter"),
        ("hold.drive.teeth", "many", "Accepted: a whole number"),
    ],
)
def test_what_is_wrong_is_said_beside_its_field(client: Asking, field: str, value: str, said: str) -> None:
    typed = {name: text for name, text in LEG.items() if name != "units"} | {field: value}
    page = client.post("/", data=typed)
    assert page.status_code == 422
    assert said.lower() in beside(page.text, field).lower()
    assert unescape(page.text).count(value if len(value) < 50 else value[:50]) >= 1


def test_a_contradiction_stands_beside_both_fields(client: Asking) -> None:
    page = client.post("/", data={**LEG, "work.finished_diameter": "4 in"}).text
    assert beside(page, "work.diameter") == beside(page, "work.finished_diameter") != ""


def test_what_is_missing_is_said_beside_its_field(client: Asking) -> None:
    page = client.post("/", data={"work.material": "ash"})
    assert page.status_code == 422
    assert beside(page.text, "work.diameter") == "Is missing."
    assert beside(page.text, "work.material") == ""
    assert "Put right what is marked beside its field." in page.text


def test_a_field_nobody_knows_is_said_at_the_top(client: Asking) -> None:
    page = client.post("/", data={**LEG, "work.diametr": "3 in"})
    assert "work.diametr: Is not a known field." in beside(page.text, "")
    assert "Did you mean work.diameter?" in beside(page.text, "")


def test_markup_in_a_case_stays_text(client: Asking) -> None:
    evil = "<script>alert(1)</script>\" onfocus='x'"
    for field in ("work.material", "title", "work.length", "nonsense" + evil):
        page = client.post("/", data={**LEG, "ask": "mount", field: evil})
        assert "<script>alert" not in page.text
        assert "&lt;script&gt;alert(1)" in page.text


@pytest.mark.parametrize(
    ("ask", "there", "gone"),
    [
        ("mount", "Cautions", "Start at"),
        ("speed", "Limits on the speed", "Limits on the thrust"),
        ("thrust", "Limits on the thrust", "Limits on the speed"),
        ("hold", "Holds compared", "Limits on the speed"),
    ],
)
def test_a_question_is_answered_with_its_own_parts(client: Asking, ask: str, there: str, gone: str) -> None:
    told = text_of(client.post("/", data={**LEG, "ask": ask}).text)
    assert there in told
    assert gone not in told


def test_what_must_not_be_mounted_gets_no_speed(client: Asking) -> None:
    told = text_of(client.post("/", data={**LEG, "work.condition": "through-crack"}).text)
    assert "DO NOT MOUNT." in told
    assert "None of these is a value to run at: it must not be mounted." in told
    assert "Start at" not in told
    assert "Step by step" not in told


def test_no_safe_thrust_gets_no_number_to_set(client: Asking) -> None:
    thin = {"work.material": "beech", "work.diameter": "12 mm", "work.length": "900 mm", "work.form": "round"}
    page = client.post("/", data={**thin, "ask": "thrust", "cut.force": "80 N", "hold.method": "toothed-ring-drive"})
    assert "no safe thrust with these centers" in page.text
    assert "Tailstock, set" not in page.text


def test_every_field_is_there_on_request(client: Asking) -> None:
    page = client.post("/", data={**LEG, "all": "yes"}).text
    assert page.count('<details class="more" hidden>') == 5


def live(client: Asking, form: dict[str, Any]) -> dict[str, Any]:
    told = client.post("/live", data=form)
    assert told.status_code == 200
    return dict(told.json())


def test_while_typing_the_pieces_of_the_page_come_alone(client: Asking) -> None:
    told = live(client, LEG)
    assert told["line"].startswith("GO, WITH CARE. Start ")
    assert told["answer"] in client.post("/", data=LEG).text
    assert told["problems"] == {}
    assert told["assumed"]["work.grain"] == "along"
    assert "machine.min_rpm" not in told["shown"]


def test_while_typing_a_half_written_value_is_a_problem_of_its_field(client: Asking) -> None:
    told = live(client, {**LEG, "work.moisture": "9 in"})
    assert told["answer"] is None
    assert list(told["problems"]) == ["work.moisture"]
    assert live(client, {"ask": "speed"}) | {"shown": []} == {
        "answer": None, "line": "", "problems": {}, "shown": [], "assumed": {}, "again": "",
    }  # fmt: skip


def test_one_change_shows_before_and_after(client: Asking) -> None:
    before = live(client, LEG)["again"]
    told = text_of(client.post("/", data={**LEG, "work.diameter": "12 in", "before": before}).text)
    assert "What that changed Before After Largest diameter (you) 3 in 12 in" in told
    was, now = re.search(r"Never above (\d+) rpm \([a-z-]+\) (\d+) rpm", told).groups()  # type: ignore[union-attr]  # fails then
    assert int(now) < int(was)


@pytest.mark.parametrize(
    "before", ["", "ask=advise", "work.material=nonsense", "ask=speed&work.material=ash", "=&=%00&%ff"]
)
def test_without_an_answer_before_nothing_is_compared(client: Asking, before: str) -> None:
    assert "What that changed" not in client.post("/", data={**LEG, "before": before}).text


def test_the_case_comes_as_a_file_that_reads_back(client: Asking) -> None:
    got = client.post("/case.yaml", data={**LEG, "title": "a leg"})
    assert got.headers["content-disposition"] == 'attachment; filename="case.yaml"'
    assert got.headers["content-type"].startswith("application/yaml")
    assert read_text(got.text, "yaml", "it") == read_case(None, [*WORDS, "title=a leg"])


def test_the_answer_comes_as_a_file(client: Asking, answer: dict[str, Any]) -> None:
    got = client.post("/answer.json", data=LEG)
    assert got.headers["content-disposition"] == 'attachment; filename="answer.json"'
    assert got.json() == json.loads(json.dumps(answer))


def test_the_sheet_comes_as_a_page(client: Asking) -> None:
    got = client.post("/sheet.html", data=LEG)
    assert got.headers["content-disposition"] == 'attachment; filename="sheet.html"'
    assert "sugar maple" in got.text


@pytest.mark.slow
@pytest.mark.web
@pytest.mark.parametrize(("ending", "begins"), [(".pdf", b"%PDF-"), (".svg", b"<?xml")])
def test_the_sheet_comes_as_a_file(client: Asking, ending: str, begins: bytes) -> None:
    got = client.post(f"/sheet{ending}", data=LEG)
    assert got.status_code == 200
    assert got.headers["content-disposition"] == f'attachment; filename="sheet{ending}"'
    assert got.headers["content-type"].startswith(app.SHEETS[ending])
    assert got.content.lower().startswith(begins.lower())


@pytest.mark.parametrize("path", ["/case.yaml", "/answer.json", "/sheet.pdf"])
def test_a_file_of_a_wrong_form_is_refused(client: Asking, path: str) -> None:
    got = client.post(path, data={"work.material": "ash"})
    assert got.status_code == 422
    assert {entry["field"] for entry in got.json()["problems"]} == {"work.diameter", "work.length"}


def test_a_program_asks_with_a_case_in_json(client: Asking, answer: dict[str, Any]) -> None:
    case = {"units": "inch", "work": {}, "machine": {}}
    for name, value in LEG.items():
        if "." in name:
            section, _, field = name.partition(".")
            case[section][field] = value  # type: ignore[index]  # sections are dictionaries
    assert client.post("/api/answer", json=case).json() == json.loads(json.dumps(answer))
    few = client.post("/api/answer?ask=mount", json=case).json()
    assert "speed" not in few
    assert few["verdict"] == answer["verdict"]
    assert read_text(client.post("/api/case", json=case).text, "yaml", "it") == read_case(None, WORDS)


@pytest.mark.parametrize(
    ("body", "field", "message"),
    [
        (b"", "", "is empty"),
        (b"\x00\xff\xfe", "", "is not"),
        (b"[]", "", "is no case"),
        (b'{"work": {"diameter": "3 in", "length": "4 in", "material": "\\ud800"}}', "work.material", "be printed"),
        (TWICE, "work.length", "is given twice"),
        (b"[" * 5000, "", "goes too deep"),
        (b'{"work": {"diameter": NaN, "length": "4 in"}}', "", "is not JSON here"),
    ],
)  # fmt: skip
def test_a_case_that_is_none_is_refused_with_its_place(client: Asking, body: bytes, field: str, message: str) -> None:
    got = client.post("/api/answer", content=body, headers={"content-type": "application/json"})
    assert got.status_code == 422
    problem = got.json()["problems"][0]
    assert problem["field"] == field
    assert message in problem["message"]


@pytest.mark.parametrize(
    ("method", "path", "status", "said"),
    [
        ("POST", "/api/answer?ask=nonsense", 422, "ask is one of: advise, mount, hold, speed, thrust"),
        ("GET", "/nowhere", 404, "Not Found"),
        ("GET", "/static/../app.py", 404, "Not Found"),
        ("GET", "/static/app.py", 404, "No such file."),
        ("GET", "/explain/nonsense", 404, "a rule, figure, limit, method"),
        ("GET", "/what-is-it?at=nowhere", 404, "No such step; begin at /what-is-it."),
        ("DELETE", "/", 405, "Method Not Allowed"),
        ("GET", "/live", 405, "Method Not Allowed"),
    ],
)
def test_what_is_not_there_is_said(client: Asking, method: str, path: str, status: int, said: str) -> None:
    got = client.request(method, path)
    assert got.status_code == status
    assert said in got.json()["error"]


def test_a_wrong_method_is_told_the_right_ones(client: Asking) -> None:
    assert set(client.request("PUT", "/").headers["allow"].split(", ")) == {"GET", "HEAD", "POST"}


@pytest.mark.parametrize(
    ("path", "kind"), [("/", "application/json"), ("/live", "text/plain"), ("/api/case", app.FORM)]
)
def test_a_body_of_another_kind_is_refused(client: Asking, path: str, kind: str) -> None:
    got = client.post(path, content=b"x", headers={"content-type": kind})
    assert got.status_code == 415
    assert got.json()["error"].startswith("This address takes application/")


def test_more_fields_than_any_case_has_are_refused(client: Asking) -> None:
    got = client.post("/live", content=b"a=1&" * 500, headers={"content-type": app.FORM})
    assert (got.status_code, got.json()) == (422, {"error": "More than 400 fields: a case has fewer."})


@pytest.mark.parametrize("name", ["no-window", "rim-speed", "spur-drive", "sugar maple", "dust-limits"])
def test_a_name_is_explained(client: Asking, name: str) -> None:
    got = client.get(f"/explain/{name}")
    assert got.status_code == 200
    assert f"<h1>{name}</h1>" in got.text


def test_style_and_script_come_with_it(client: Asking) -> None:
    assert client.get("/static/page.css").headers["content-type"].startswith("text/css")
    assert client.get("/static/page.js").headers["content-type"].startswith("text/javascript")
    page = client.get("/").text
    assert re.findall(r"(?:src|href)=\"(?!/|#|data:)", page) == []
    assert "<style" not in page
    assert " style=" not in page
    assert "<script>" not in page


def test_the_path_to_an_unknown_material_can_be_walked(client: Asking) -> None:
    seen: set[str] = set()
    waiting = ["/what-is-it"]
    ends = 0
    while waiting:
        page = client.get(waiting.pop())
        assert page.status_code == 200
        onward = {unescape(path) for path in re.findall(r'href="(/what-is-it\?at=[^"]+)"', page.text)}
        ends += "Go on with" in page.text
        waiting += onward - seen
        seen |= onward
    assert ends > 10
    assert client.get("/?work.material=unknown").status_code == 200


def test_a_fault_of_the_program_is_a_sentence(client: Asking, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> str:
        raise RuntimeError("secret")

    monkeypatch.setattr(pages, "page_html", broken)
    got = client.get("/")
    assert (got.status_code, got.json()) == (
        500, {"error": "A fault of the program (RuntimeError): no advice was given."},
    )  # fmt: skip


def test_a_fault_in_a_worker_is_a_sentence(client: Asking) -> None:
    got = client.post("/api/answer", content=b"{}", headers={"content-type": "application/json"})
    assert got.status_code == 422
    told = worker.do({"do": "answer", "parts": ["speed"]})
    assert told == {"fault": "KeyError: 'words'"}


def test_a_number_that_no_formula_takes_is_a_problem_of_the_input(monkeypatch: pytest.MonkeyPatch) -> None:
    def refusing(*_: object, **__: object) -> object:
        raise FigureInputError("taper", 9.0, "a number from 0 to 7")

    monkeypatch.setattr(whole, "answer_for", refusing)
    told = worker.do({"do": "answer", "words": ["work.material=ash", "work.diameter=3in", "work.length=9in"]})
    assert [problem["message"] for problem in told["problems"]] == [
        "taper: 9.0 was given; accepted: a number from 0 to 7"
    ]
    assert pages.by_field(told["problems"]) == {"": ["Taper: 9.0 was given; accepted: a number from 0 to 7."]}


def test_numbers_are_printed_as_a_person_writes_them() -> None:
    assert [pages.several_figures(value) for value in (0.123456, 12.3456, 1234.5)] == ["0.123", "12.3", "1,234"]
    assert pages.bars([], "rpm") == []
    bars = pages.bars([{"rpm": 10.0}, {"rpm": 1000.0}], "rpm")
    assert [share for _, share in bars] == [pages.SHORTEST_BAR, pages.WHOLE_BAR]
