"""What the page does with the replies of its workers."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping
from typing import Any

import pytest

from advisor.web import app
from advisor.web.guards import own_hosts
from advisor.web.workers import Pool, Unanswered
from tests.web.asking import PORT, Asking


class Stub(Pool):
    """Replies as it is told to, and counts."""

    def __init__(self, reply: Any) -> None:
        super().__init__(0)
        self.reply = reply
        self.asked: list[Any] = []

    async def ask(self, task: Mapping[str, Any]) -> dict[str, Any]:
        self.asked.append(task["name"])
        if isinstance(self.reply, Exception):
            raise self.reply
        return dict(self.reply)


@pytest.mark.parametrize(
    ("reply", "status", "said"),
    [
        (Unanswered("Too many questions at once."), 503, "Too many questions at once."),
        ({"fault": "KeyError: 'x'"}, 500, "A fault of the program (KeyError: 'x'): no advice was given."),
    ],
)
def test_no_reply_is_a_sentence_and_is_not_remembered(reply: Any, status: int, said: str) -> None:
    pool = Stub(reply)
    with Asking(app.build(pool, own_hosts(PORT))) as client:
        for _ in range(2):
            got = client.get("/explain/ash")
            assert (got.status_code, got.json()) == (status, {"error": said})
    assert pool.asked == ["ash", "ash"]


def test_the_last_replies_are_remembered_and_the_oldest_forgotten(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(app, "REMEMBERED", 2)
    pool = Stub({"text": "a page"})
    desk = app.Desk(pool)

    async def run() -> None:
        for name in ("ash", "oak", "ash", "elm", "ash", "oak"):
            await desk.ask({"name": name})

    asyncio.run(run())
    assert pool.asked == ["ash", "oak", "elm", "oak"]
