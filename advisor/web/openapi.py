"""What the page answers to, as OpenAPI: made from the schemas of case and answer that everything else uses."""

from __future__ import annotations

from functools import lru_cache
from typing import Any

from advisor import __version__
from advisor.web.asked import ASKS
from advisor.web.fields import form_fields

TEXT = {"type": "string"}
NULL_TEXT = {"type": ["string", "null"]}
NUMBER_OR_NOT = {"type": ["integer", "null"]}
SHEETS = (
    (".html", "text/html", TEXT), (".svg", "image/svg+xml", TEXT),
    (".pdf", "application/pdf", {"type": "string", "contentMediaType": "application/pdf"}),
)  # fmt: skip
FORM = "application/x-www-form-urlencoded"


def _object(properties: dict[str, Any]) -> dict[str, Any]:
    return {
        "type": "object", "properties": properties, "required": list(properties), "additionalProperties": False,
    }  # fmt: skip


PROBLEM = _object(
    {
        "file": NULL_TEXT, "line": NUMBER_OR_NOT, "column": NUMBER_OR_NOT, "field": TEXT, "value": NULL_TEXT,
        "message": TEXT, "accepted": NULL_TEXT, "nearest": NULL_TEXT, "example": NULL_TEXT,
    }
)  # fmt: skip
LIVE = _object(
    {
        "answer": {**NULL_TEXT, "description": "the answer as HTML; null where there is none"},
        "line": {**TEXT, "description": "the answer in one line"},
        "problems": {"type": "object", "additionalProperties": {"type": "array", "items": TEXT}},
        "shown": {"type": "array", "items": TEXT, "description": "fields that matter now"},
        "assumed": {"type": "object", "additionalProperties": TEXT},
        "again": {**TEXT, "description": "the question in one line, to be sent as `before` with the next one"},
    }
)


def _content(kind: str, schema: Any) -> dict[str, Any]:
    return {kind: {"schema": schema}}


def _response(about: str, kind: str, schema: Any) -> dict[str, Any]:
    return {"description": about, "content": _content(kind, schema)}


def _said(about: str) -> dict[str, Any]:
    return _response(about, "application/json", _ref("Error"))


def _ref(name: str) -> dict[str, str]:
    return {"$ref": f"#/components/schemas/{name}"}


GUARDED = {
    "403": _said("asked by another site"),
    "408": _said("the request came too slowly"),
    "413": _said("the request is too large"),
    "421": _said("asked under a foreign address"),
    "500": _said("a fault of the program; no advice was given"),
    "503": _said("no worker could answer; no advice was given"),
}
WRONG = {"422": _response("the input is wrong", "application/json", {"anyOf": [_ref("Problems"), _ref("Error")]})}
WRONG_PAGE = {
    "422": {
        "description": "the input is wrong",
        "content": {**_content("text/html", TEXT), **_content("application/json", _ref("Error"))},
    }
}
OTHER_KIND = {"415": _said("a body of another kind")}
NOTHING = {"404": _said("nothing goes by that name")}


def _form() -> dict[str, Any]:
    """Every field of the form; what is in them is checked on reading."""
    several = {"type": "array", "items": TEXT}
    fields: dict[str, Any] = {
        "ask": {"enum": list(ASKS)}, "units": {"enum": ["", "inch", "metric"]},
        "title": TEXT, "before": TEXT, "all": TEXT,
    }  # fmt: skip
    for entry in form_fields():
        fields[entry.name] = {**(several if entry.shape == "several" else TEXT), "description": entry.about}
    return {"type": "object", "properties": fields, "additionalProperties": False}


def _get(about: str, responses: dict[str, Any], parameters: list[dict[str, Any]]) -> dict[str, Any]:
    return {"get": {"summary": about, "parameters": parameters, "responses": {**responses, **GUARDED}}}


def _post(about: str, body: dict[str, Any], responses: dict[str, Any], parameters: Any = ()) -> dict[str, Any]:
    return {
        "post": {
            "summary": about,
            "parameters": list(parameters),
            "requestBody": {"required": True, "content": body},
            "responses": {**responses, **OTHER_KIND, **GUARDED},
        }
    }


def _parameter(place: str, name: str, schema: Any) -> dict[str, Any]:
    return {"name": name, "in": place, "required": place == "path", "schema": schema}


def _paths() -> dict[str, Any]:
    html = {"200": _response("a page", "text/html", TEXT)}
    yaml = {"200": _response("a case file", "application/yaml", TEXT)}
    answer = {"200": _response("the answer", "application/json", _ref("Answer"))}
    form, case = _content(FORM, _ref("Form")), _content("application/json", _ref("Case"))
    style_or_script = {**_content("text/css", TEXT), **_content("text/javascript", TEXT)}
    query = [{**_parameter("query", "form", _ref("Form")), "style": "form", "explode": True}]
    home = {
        **_get("the page, its form filled in from the address", {**html, **WRONG}, query),
        **_post("the page with the answer to a form", form, {**html, **WRONG_PAGE}),
    }
    ask = _parameter("query", "ask", {"enum": list(ASKS)})
    name = _parameter("path", "name", {"type": "string", "minLength": 1, "examples": ["no-window", "sugar maple"]})
    live = {"200": _response("the pieces", "application/json", _ref("Live"))}
    return {
        "/": home,
        "/live": _post("the pieces of the page that change while somebody types", form, {**live, **WRONG}),
        "/case.yaml": _post("the case of a form as a file", form, {**yaml, **WRONG}),
        "/answer.json": _post("the answer to a form as a file", form, {**answer, **WRONG}),
        **{
            f"/sheet{ending}": _post("the sheet of a form", form, {"200": _response("a file", kind, file), **WRONG})
            for ending, kind, file in SHEETS
        },
        "/api/answer": _post("the answer to a case", case, {**answer, **WRONG}, [ask]),
        "/api/case": _post("a case as YAML", case, {**yaml, **WRONG}),
        "/explain/{name}": _get("a name in plain words", {**html, **NOTHING}, [name]),
        "/what-is-it": _get("one step to an unknown material", {**html, **NOTHING}, [_parameter("query", "at", TEXT)]),
        "/static/{name}": _get(
            "style and script of the page",
            {"200": {"description": "the file", "content": style_or_script}, **NOTHING},
            [_parameter("path", "name", {"enum": ["page.css", "page.js"]})],
        ),
        "/openapi.json": _get("this description", {"200": _response("it", "application/json", {"type": "object"})}, []),
    }  # fmt: skip


@lru_cache(maxsize=1)
def openapi() -> dict[str, Any]:
    """The whole description, OpenAPI 3.1."""
    from advisor.report.schema import schemas

    found = {name.capitalize(): schema for name, schema in schemas().items()}
    return {
        "openapi": "3.1.0",
        "info": {
            "title": "Advice beside the lathe, on this machine only",
            "version": __version__,
            "description": "Posts must come from this page or from a program on this machine.",
        },
        "paths": _paths(),
        "components": {
            "schemas": {
                **{name: {key: value for key, value in one.items() if key != "$schema"} for name, one in found.items()},
                "Error": _object({"error": TEXT}),
                "Problems": _object({"problems": {"type": "array", "items": PROBLEM, "minItems": 1}}),
                "Live": LIVE,
                "Form": _form(),
            }
        },
    }
