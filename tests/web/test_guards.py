"""Who may ask, how much and how long; and the headers of every response."""

from __future__ import annotations

import asyncio
from collections.abc import Iterator
from typing import Any

import pytest
from starlette.responses import PlainTextResponse
from starlette.types import Message, Receive, Scope, Send

from advisor.web.guards import HEADERS, Guards, own_hosts
from tests.web.asking import Asking

HOST = "http://127.0.0.1:8321"
FORM = {"work.material": "ash"}


async def echo(scope: Scope, receive: Receive, send: Send) -> None:
    body = (await receive())["body"]
    await PlainTextResponse(body)(scope, receive, send)


@pytest.fixture
def guarded() -> Iterator[Asking]:
    with Asking(Guards(echo, own_hosts(8321), largest=100)) as opened:
        yield opened


def test_a_program_on_this_machine_may_ask(guarded: Asking) -> None:
    assert guarded.post("/", content="some wood").text == "some wood"


@pytest.mark.parametrize("host", ["127.0.0.1:8321", "localhost:8321", "LOCALHOST:8321"])
def test_it_answers_under_its_own_address(guarded: Asking, host: str) -> None:
    assert guarded.get("/", headers={"host": host}).status_code == 200


@pytest.mark.parametrize(
    "host", ["lathe.example", "127.0.0.1", "127.0.0.1:80", "127.0.0.1:8321.lathe.example", "127.0.0.2:8321", ""]
)
@pytest.mark.parametrize("method", ["GET", "POST"])
def test_it_refuses_a_foreign_host(guarded: Asking, host: str, method: str) -> None:
    refused = guarded.request(method, "/", headers={"host": host})
    assert refused.status_code == 421
    assert refused.json() == {"error": "This page answers only under its own address on this machine."}


def test_port_80_goes_without_saying() -> None:
    assert "localhost" in own_hosts(80)
    assert "localhost" not in own_hosts(8321)


@pytest.mark.parametrize(
    "headers",
    [
        {"origin": "http://lathe.example"},
        {"origin": "null"},
        {"origin": "http://127.0.0.1:9000"},
        {"origin": "https://127.0.0.1:8321"},
        {"sec-fetch-site": "cross-site"},
        {"sec-fetch-site": "same-site"},
        {"sec-fetch-site": "cross-site", "sec-fetch-mode": "navigate"},
        {"origin": HOST, "sec-fetch-site": "cross-site"},
    ],
)
def test_another_site_must_not_post(guarded: Asking, headers: dict[str, str]) -> None:
    refused = guarded.post("/", headers=headers, data=FORM)
    assert refused.status_code == 403
    assert refused.json() == {"error": "Another site must not ask here."}


@pytest.mark.parametrize(
    "headers",
    [
        {},
        {"origin": HOST, "sec-fetch-site": "same-origin"},
        {"origin": "http://localhost:8321"},
        {"sec-fetch-site": "none"},
    ],
)
def test_the_page_itself_may_post(guarded: Asking, headers: dict[str, str]) -> None:
    assert guarded.post("/", headers=headers, data=FORM).status_code == 200


def test_another_site_may_link_here_and_not_load_from_here(guarded: Asking) -> None:
    link = {"sec-fetch-site": "cross-site", "sec-fetch-mode": "navigate"}
    load = {"sec-fetch-site": "cross-site", "sec-fetch-mode": "no-cors"}
    assert guarded.get("/", headers=link).status_code == 200
    assert guarded.get("/", headers=load).status_code == 403


@pytest.mark.parametrize("path", ["/", "/nowhere"])
@pytest.mark.parametrize("host", ["127.0.0.1:8321", "lathe.example"])
def test_every_response_has_the_headers_that_keep_it_here(client: Asking, path: str, host: str) -> None:
    response = client.get(path, headers={"host": host})
    assert {name: response.headers[name] for name in HEADERS} == HEADERS
    policy = response.headers["content-security-policy"]
    assert "unsafe" not in policy
    assert "default-src 'none'" in policy
    assert "frame-ancestors 'none'" in policy


@pytest.mark.parametrize("size", [101, 10_000_000])
def test_a_body_over_the_limit_is_refused(guarded: Asking, size: int) -> None:
    refused = guarded.post("/", content=b"x" * size)
    assert refused.status_code == 413
    assert refused.json() == {"error": "More than 100 bytes: a case has a few thousand."}
    assert guarded.post("/", content=b"x" * 100).status_code == 200


def ask(messages: list[Message], seconds: float = 10.0, headers: list[tuple[bytes, bytes]] | None = None) -> Any:
    """Status of a request whose body comes in these pieces, and then nothing more."""
    scope = {"type": "http", "method": "POST", "path": "/", "headers": [(b"host", b"127.0.0.1:8321"), *(headers or [])]}
    sent: list[Message] = []

    async def receive() -> Message:
        if messages:
            return messages.pop(0)
        await asyncio.Event().wait()
        raise AssertionError

    async def send(message: Message) -> None:
        sent.append(message)

    asyncio.run(Guards(echo, own_hosts(8321), largest=100, seconds=seconds)(scope, receive, send))
    return sent[0]["status"]


def piece(size: int) -> Message:
    return {"type": "http.request", "body": b"x" * size, "more_body": True}


def test_a_body_that_does_not_say_its_length_is_counted() -> None:
    assert ask([piece(60), piece(60)]) == 413


@pytest.mark.parametrize("length", [b"-1", b"many", b"9" * 5000])
def test_a_length_that_is_none_does_not_matter(length: bytes) -> None:
    assert ask([{"type": "http.disconnect"}], headers=[(b"content-length", length)]) in (400, 413)


def test_a_body_that_does_not_come_is_given_up() -> None:
    assert ask([piece(1)], seconds=0.05) == 408


def test_a_body_that_breaks_off_is_not_answered() -> None:
    assert ask([piece(1), {"type": "http.disconnect"}]) == 400
