"""What stands before every page: who may ask, how much, how long, and the headers that keep the answer here."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Mapping

from starlette.datastructures import Headers, MutableHeaders
from starlette.types import ASGIApp, Message, Receive, Scope, Send

LARGEST_BODY = 64 * 1024  # bytes, as for a case file
BODY_SECONDS = 10.0
SAFE_METHODS = frozenset({"GET", "HEAD", "OPTIONS"})
OWN_SITE = frozenset({"same-origin", "none"})
HEADERS = {
    "content-security-policy": (
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
        "form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
    ),
    "x-content-type-options": "nosniff",
    "x-frame-options": "DENY",
    "referrer-policy": "same-origin",  # none at all would make a browser hide where our own form is posted from
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "permissions-policy": "camera=(), geolocation=(), microphone=()",
    "cache-control": "no-store",
}


class Refused(Exception):  # noqa: N818 -- what happened to the request
    """A request that gets no answer: status and the reason in words."""

    def __init__(self, status: int, reason: str) -> None:
        super().__init__(reason)
        self.status = status
        self.reason = reason


def own_hosts(port: int) -> frozenset[str]:
    """What a browser on this machine writes into its Host header."""
    names = ("127.0.0.1", "localhost")
    return frozenset(f"{name}:{port}" for name in names) | (frozenset(names) if port == 80 else frozenset())


class Guards:
    """Refuses foreign hosts, posts from other sites, large and slow bodies; sets the headers of every response."""

    def __init__(
        self, app: ASGIApp, hosts: frozenset[str], largest: int = LARGEST_BODY, seconds: float = BODY_SECONDS
    ) -> None:
        self.app = app
        self.hosts = hosts
        self.origins = frozenset(f"http://{host}" for host in hosts)
        self.largest = largest
        self.seconds = seconds

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return

        async def send_guarded(message: Message) -> None:
            if message["type"] == "http.response.start":
                MutableHeaders(scope=message).update(HEADERS)
            await send(message)

        try:
            self.let_in(scope["method"], Headers(scope=scope))
            body = await asyncio.wait_for(self.body(receive), self.seconds)
        except Refused as refused:
            await _refuse(refused, send_guarded)
        except asyncio.TimeoutError:
            await _refuse(Refused(408, "The request came too slowly."), send_guarded)
        else:
            await self.app(scope, _again(body, receive), send_guarded)

    def let_in(self, method: str, headers: Mapping[str, str]) -> None:
        """Raises Refused for a request that was not made from this page or on this machine."""
        if headers.get("host", "").lower() not in self.hosts:
            raise Refused(421, "This page answers only under its own address on this machine.")
        origin, site = headers.get("origin"), headers.get("sec-fetch-site", "none")
        if method not in SAFE_METHODS and (origin is not None and origin not in self.origins):
            raise Refused(403, "Another site must not ask here.")
        visit = method in SAFE_METHODS and headers.get("sec-fetch-mode") == "navigate"
        if site not in OWN_SITE and not visit:
            raise Refused(403, "Another site must not ask here.")
        length = headers.get("content-length", "0")
        if length.isascii() and length.isdecimal() and int(length[:20]) > self.largest:
            raise self.too_large

    @property
    def too_large(self) -> Refused:
        """What is said of a body over the limit."""
        return Refused(413, f"More than {self.largest} bytes: a case has a few thousand.")

    async def body(self, receive: Receive) -> bytes:
        """The whole body. Raises Refused."""
        parts: list[bytes] = []
        size = 0
        while True:
            message = await receive()
            if message["type"] == "http.disconnect":
                raise Refused(400, "The request broke off.")
            parts.append(message.get("body", b""))
            size += len(parts[-1])
            if size > self.largest:
                raise self.too_large
            if not message.get("more_body", False):
                return b"".join(parts)


def _again(body: bytes, receive: Receive) -> Receive:
    """The body as one message, then whatever the connection says."""
    waiting = [body]

    async def replay() -> Message:
        if waiting:
            return {"type": "http.request", "body": waiting.pop(), "more_body": False}
        return await receive()

    return replay


async def _refuse(refused: Refused, send: Send) -> None:
    text = json.dumps({"error": refused.reason}).encode()
    headers = [
        (b"content-type", b"application/json"),
        (b"content-length", str(len(text)).encode()),
        (b"connection", b"close"),  # what is left of a body nobody reads
    ]
    await send({"type": "http.response.start", "status": refused.status, "headers": headers})
    await send({"type": "http.response.body", "body": text})
