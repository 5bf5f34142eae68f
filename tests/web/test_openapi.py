"""The description against the page: every address is in it, and what comes back is what it says."""

from __future__ import annotations

import re
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from advisor.report.schema import schemas
from advisor.web.app import FORM, ROUTES
from tests.web.asking import Asking

ASH = {"work": {"material": "ash", "diameter": "10 in", "length": "3 in"}}
TYPED = {"work.material": "ash", "work.diameter": "10 in", "work.length": "3 in", "ask": "mount"}


@pytest.fixture(scope="module")
def described(client: Asking) -> dict[str, Any]:
    return dict(client.get("/openapi.json").json())


def check(described: dict[str, Any], schema: Any, document: Any) -> None:
    whole = {**schema, "components": described["components"]}
    Draft202012Validator(whole).validate(document)


def test_every_address_is_described_and_no_other(described: dict[str, Any]) -> None:
    told = {(method.upper(), path) for path, methods in described["paths"].items() for method in methods}
    assert told == {(method, path) for method, path, _ in ROUTES}


def test_case_and_answer_are_those_of_the_program(described: dict[str, Any]) -> None:
    for name, schema in schemas().items():
        assert described["components"]["schemas"][name.capitalize()] == {
            key: value for key, value in schema.items() if key != "$schema"
        }


def test_its_own_schemas_are_schemas(described: dict[str, Any]) -> None:
    for name in ("Error", "Problems", "Live"):  # case and answer have tests of their own
        Draft202012Validator.check_schema(described["components"]["schemas"][name])


def test_every_reference_leads_somewhere(described: dict[str, Any]) -> None:
    names = set(re.findall(r"#/components/schemas/(\w+)", str(described["paths"])))
    assert names == set(described["components"]["schemas"])


@pytest.mark.parametrize(
    ("path", "given", "status"),
    [
        ("/api/answer", {"json": ASH}, 200),
        ("/api/answer", {"json": {"work": {}}}, 422),
        ("/api/answer?ask=x", {"json": ASH}, 422),
        ("/api/answer", {"data": TYPED}, 415),
        ("/api/answer", {"json": ASH, "headers": {"origin": "http://lathe.example"}}, 403),
        ("/api/answer", {"json": ASH, "headers": {"host": "lathe.example"}}, 421),
        ("/api/answer", {"content": b" " * 70000, "headers": {"content-type": "application/json"}}, 413),
        ("/api/case", {"json": {"work": 3}}, 422),
        ("/live", {"data": TYPED}, 200),
        ("/live", {"data": {}, "headers": {"content-type": FORM}}, 200),
        ("/live", {"data": {**TYPED, "work.mass": "heavy", "nonsense": "1"}}, 200),
        ("/live", {"content": b"a=1&" * 500, "headers": {"content-type": FORM}}, 422),
        ("/answer.json", {"data": TYPED}, 200),
        ("/answer.json", {"data": {"units": "cubits"}}, 422),
    ],
)
def test_what_comes_back_is_what_it_says(
    client: Asking, described: dict[str, Any], path: str, given: dict[str, Any], status: int
) -> None:
    got = client.post(path, **given)
    assert got.status_code == status
    content = described["paths"][path.partition("?")[0]]["post"]["responses"][str(status)]["content"]
    check(described, content["application/json"]["schema"], got.json())


def test_the_form_takes_every_field_of_its_schema(client: Asking, described: dict[str, Any]) -> None:
    fields = described["components"]["schemas"]["Form"]["properties"]
    told = client.post("/live", data=dict.fromkeys(fields, "x")).json()
    assert not [text for text in told["problems"].get("", []) if "not a known field" in text]
