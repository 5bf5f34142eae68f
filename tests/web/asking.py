"""A program on this machine that asks a page within this process."""

from __future__ import annotations

import asyncio
from types import TracebackType
from typing import Any

import httpx
from starlette.types import ASGIApp

from advisor.web.workers import Pool

PORT = 8321


class Asking:
    """Sends one request after the other; the pool, when there is one, lives as long."""

    def __init__(self, page: ASGIApp, pool: Pool | None = None) -> None:
        self.page = page
        self.pool = pool
        self.loop = asyncio.new_event_loop()

    def __enter__(self) -> Asking:
        if self.pool is not None:
            self.loop.run_until_complete(self.pool.start())
        return self

    def __exit__(
        self, kind: type[BaseException] | None, fault: BaseException | None, trace: TracebackType | None
    ) -> None:
        if self.pool is not None:
            self.loop.run_until_complete(self.pool.stop())
        self.loop.run_until_complete(self.loop.shutdown_asyncgens())
        self.loop.close()

    def request(self, method: str, path: str, **given: Any) -> httpx.Response:
        async def run() -> httpx.Response:
            way = httpx.ASGITransport(app=self.page)
            async with httpx.AsyncClient(transport=way, base_url=f"http://127.0.0.1:{PORT}") as client:
                return await client.request(method, path, **given)

        return self.loop.run_until_complete(run())

    def get(self, path: str, **given: Any) -> httpx.Response:
        return self.request("GET", path, **given)

    def post(self, path: str, **given: Any) -> httpx.Response:
        return self.request("POST", path, **given)
