"""Many at once, workers killed under them, clients that dawdle or break off: every question is answered or refused."""

from __future__ import annotations

import asyncio
import os
import random
import signal
import socket
import time
from collections import Counter
from collections.abc import Iterator
from contextlib import suppress

import httpx
import pytest

from tests.conftest import SEED, scale
from tests.web.serving import Serving, serving

pytestmark = [pytest.mark.slow, pytest.mark.web]

BETWEEN_KILLS = 6  # answers
PATIENCE = httpx.Timeout(600.0)
WOODS = ("ash", "sugar maple", "beech", "eastern white pine", "black cherry")


@pytest.fixture(scope="module")
def page() -> Iterator[Serving]:
    with serving() as opened:
        yield opened


def case(number: int) -> dict[str, object]:
    """Situations that differ, so that nothing is remembered from one to the next."""
    work = {"material": WOODS[number % 5], "diameter": f"{across(number)} mm", "length": f"{100 + number} mm"}
    return {"work": work}


def across(number: int) -> int:
    return 50 + number % 700


async def ask(client: httpx.AsyncClient, number: int) -> httpx.Response:
    return await client.post("/api/answer?ask=speed", json=case(number))


def check(number: int, got: httpx.Response) -> str:
    """An answer to this very question, or a refusal that says why; which of them."""
    if got.status_code == 503:
        assert "no advice was given" in got.json()["error"] or "Ask again" in got.json()["error"]
        return "refused"
    assert got.status_code == 200
    formulas = " ".join(limit["formula"] for limit in got.json()["speed"]["limits"])
    assert f"/{across(number)} mm" in formulas
    return "answered"


def at_once(page: Serving, numbers: range, meanwhile: object = None) -> Counter[str]:
    async def run() -> list[httpx.Response]:
        limits = httpx.Limits(max_connections=None)
        async with httpx.AsyncClient(base_url=page.address, timeout=PATIENCE, limits=limits) as client:
            asked = [asyncio.create_task(ask(client, number)) for number in numbers]
            if callable(meanwhile):
                await meanwhile(asked)
            return list(await asyncio.gather(*asked))

    return Counter(check(number, got) for number, got in zip(numbers, asyncio.run(run()), strict=True))


def test_200_requests_at_once_are_all_answered(page: Serving) -> None:
    assert at_once(page, range(200)) == {"answered": 200}


def test_killed_workers_are_replaced_and_no_question_is_lost(page: Serving) -> None:
    killed = 0
    rng = random.Random(SEED)

    async def kill(asked: list[asyncio.Task[httpx.Response]]) -> None:
        nonlocal killed
        for more in range(BETWEEN_KILLS, len(asked), BETWEEN_KILLS):
            while sum(task.done() for task in asked) < more:
                await asyncio.sleep(0.01)
            with suppress(ProcessLookupError):
                os.kill(rng.choice(page.workers()), signal.SIGKILL)
                killed += 1

    numbers = range(1000, 1000 + scale(300))
    told = at_once(page, numbers, kill)
    print(dict(told), f"{killed} workers killed")
    assert killed >= len(numbers) // BETWEEN_KILLS - 1
    assert told.total() == len(numbers)
    assert told["answered"] >= 0.9 * len(numbers)
    assert at_once(page, range(2000, 2004)) == {"answered": 4}


def connect(page: Serving) -> socket.socket:
    client = socket.create_connection(("127.0.0.1", page.port))
    client.settimeout(60)
    return client


HEAD = "POST /live HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\nContent-Type: application/x-www-form-urlencoded\r\n"


def test_slow_and_broken_clients_hold_nobody_up(page: Serving) -> None:
    head = HEAD.format(port=page.port).encode()
    dawdling = [connect(page) for _ in range(50)]
    for number, client in enumerate(dawdling):
        client.sendall(head[: number + 1] if number % 2 else head + b"Content-Length: 5000\r\n\r\nwork.material=a")
    for number in range(50):  # broken off at every place
        with connect(page) as client:
            client.sendall((head + b"Content-Length: 20\r\n\r\nwork.material=ash")[: 3 * number])
    assert at_once(page, range(3000, 3004)) == {"answered": 4}
    for client in dawdling:
        with client:
            said = client.recv(4096)
            assert said == b"" or said.startswith((b"HTTP/1.1 408", b"HTTP/1.1 400"))
    assert at_once(page, range(3010, 3012)) == {"answered": 2}


def test_who_does_not_read_the_answer_holds_nobody_up(page: Serving) -> None:
    deaf = [connect(page) for _ in range(20)]
    for client in deaf:
        client.sendall(f"GET / HTTP/1.1\r\nHost: 127.0.0.1:{page.port}\r\n\r\n".encode() * 20)
    time.sleep(0.5)
    assert at_once(page, range(4000, 4004)) == {"answered": 4}
    for client in deaf:
        client.close()


@pytest.mark.parametrize(
    "said",
    [
        b"\x00" * 2000,
        b"GET / HTTP/9.9\r\n\r\n",
        b"GET /" + b"a" * 100_000 + b" HTTP/1.1\r\n\r\n",
        b"GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n",
        b"POST / HTTP/1.1\r\nHost: a\r\nContent-Length: -5\r\n\r\n",
        b"POST / HTTP/1.1\r\nHost: a\r\nTransfer-Encoding: chunked\r\nContent-Length: 4\r\n\r\nzz\r\n",
    ],
)
def test_what_is_no_http_is_refused(page: Serving, said: bytes) -> None:
    with connect(page) as client:
        client.sendall(said)
        assert client.recv(4096).startswith(b"HTTP/1.1 4")
