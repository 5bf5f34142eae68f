"""HTTP with an end to patience: a client that does not finish its request line and headers is hung up on."""

from __future__ import annotations

import asyncio

from uvicorn.protocols.http.h11_impl import H11Protocol

HEADER_SECONDS = 10.0


class Impatient(H11Protocol):
    """The ordinary protocol with a clock that runs while no request is being answered."""

    hanging_up: asyncio.TimerHandle | None = None
    seconds = HEADER_SECONDS

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]  # as the base has it
        super().connection_made(transport)
        self._wait()

    def data_received(self, data: bytes) -> None:
        super().data_received(data)
        if self._answering:
            self._stop_waiting()
        elif self.hanging_up is None:
            self._wait()

    def connection_lost(self, exc: Exception | None) -> None:
        self._stop_waiting()
        super().connection_lost(exc)

    @property
    def _answering(self) -> bool:
        return self.cycle is not None and not self.cycle.response_complete

    def _wait(self) -> None:
        self.hanging_up = self.loop.call_later(self.seconds, self._hang_up)

    def _stop_waiting(self) -> None:
        if self.hanging_up is not None:
            self.hanging_up.cancel()
            self.hanging_up = None

    def _hang_up(self) -> None:
        self.hanging_up = None
        if not self._answering:
            self.transport.close()
