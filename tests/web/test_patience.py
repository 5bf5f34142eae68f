"""Clients that never finish what they began to say."""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable

import pytest
import uvicorn
from starlette.responses import PlainTextResponse
from starlette.types import Receive, Scope, Send

from advisor.web.patience import Impatient
from advisor.web.serve import listen

REQUEST = b"GET / HTTP/1.1\r\nHost: here\r\n\r\n"


class Hasty(Impatient):
    """The same with less of it."""

    seconds = 0.15


async def hello(scope: Scope, receive: Receive, send: Send) -> None:
    await asyncio.sleep(0.3 if scope["path"] == "/slow" else 0)
    await PlainTextResponse("hello")(scope, receive, send)


Talk = Callable[[asyncio.StreamReader, asyncio.StreamWriter], Awaitable[bytes]]


def talk(client: Talk) -> bytes:
    """What a client gets before the line is cut."""

    async def run() -> bytes:
        with listen(0) as listening:
            server = uvicorn.Server(uvicorn.Config(hello, http=Hasty, ws="none", lifespan="off", log_level="error"))
            serving = asyncio.create_task(server._serve([listening]))
            while not server.started:
                await asyncio.sleep(0.005)
            reader, writer = await asyncio.open_connection(*listening.getsockname())
            got = await asyncio.wait_for(client(reader, writer), 20)
            writer.close()
            server.should_exit = True
            await serving
            return got

    return asyncio.run(run())


@pytest.mark.parametrize("said", [b"", b"GET", b"GET / HTTP/1.1\r\nHost: here\r\n"])
def test_whoever_does_not_finish_is_hung_up_on(said: bytes) -> None:
    async def client(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> bytes:
        writer.write(said)
        return await reader.read()

    assert talk(client) == b""


def test_whoever_finishes_late_after_an_answer_is_hung_up_on_too() -> None:
    async def client(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> bytes:
        writer.write(REQUEST)
        first = await reader.readuntil(b"hello")
        writer.write(b"GET / HT")
        return first + await reader.read()

    assert talk(client).count(b"200 OK") == 1


def test_an_answer_may_take_its_time() -> None:
    async def client(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> bytes:
        writer.write(REQUEST.replace(b"GET /", b"GET /slow"))
        return await reader.readuntil(b"hello")

    assert b"200 OK" in talk(client)


def test_what_is_no_request_is_refused() -> None:
    async def client(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> bytes:
        writer.write(b"\x16\x03\x01 not HTTP\r\n\r\n")
        return await reader.read()

    assert b"400 Bad Request" in talk(client)
