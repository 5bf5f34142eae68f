"""Opens the page on this machine and keeps it open until Ctrl-C."""

from __future__ import annotations

import asyncio
import errno
import logging
import os
import signal
import socket
from contextlib import suppress
from typing import TextIO

import uvicorn

from advisor.web.app import build
from advisor.web.guards import own_hosts
from advisor.web.patience import Impatient
from advisor.web.workers import Pool

HERE = "127.0.0.1"
MOST_WORKERS = 4
GRACE_SECONDS = 3
LOOK_SECONDS = 0.02


class PortFault(Exception):  # noqa: N818 -- the house says fault for what a user did wrong
    """The port cannot be had; the message says why and what else to try."""


def listen(port: int) -> socket.socket:
    """A socket on this machine alone. Raises PortFault."""
    listening = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    listening.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        listening.bind((HERE, port))
        listening.listen()
    except OSError as fault:
        listening.close()
        why = {errno.EADDRINUSE: "is in use", errno.EACCES: "is not for an ordinary user"}.get(
            fault.errno or 0, f"cannot be had ({fault.strerror})"
        )
        raise PortFault(f"port {port} {why}; name another with --port, or --port 0 for any that is free") from None
    return listening


def workers_here() -> int:
    """Two at least, so that one long question does not stop the page."""
    return max(2, min(os.cpu_count() or 2, MOST_WORKERS))


async def _until_stopped(server: uvicorn.Server, listening: socket.socket, out: TextIO) -> None:
    loop = asyncio.get_running_loop()

    def stop() -> None:
        server.should_exit = True

    for number in (signal.SIGINT, signal.SIGTERM):
        with suppress(NotImplementedError):  # a system without such signals
            loop.add_signal_handler(number, stop)
    # serve() would catch the signals itself and raise them again at the end
    running = asyncio.create_task(server._serve([listening]))
    while not (server.started or running.done()):
        await asyncio.sleep(LOOK_SECONDS)
    out.write(f"The page is at http://{HERE}:{listening.getsockname()[1]}/ on this machine only. Ctrl-C ends it.\n")
    out.flush()
    await running


def serve(port: int, out: TextIO) -> int:
    """Serve until Ctrl-C; 0 then. Raises PortFault."""
    with listen(port) as listening:
        config = uvicorn.Config(
            build(Pool(workers_here()), own_hosts(listening.getsockname()[1])),
            http=Impatient,
            ws="none",
            lifespan="on",
            log_level="critical",  # no traceback for who breaks off; a fault of the program is told in the page
            access_log=False,
            proxy_headers=False,
            server_header=False,
            timeout_graceful_shutdown=GRACE_SECONDS,
        )
        # A worker that is killed while it starts is reaped by whoever looks first; asyncio would warn of it.
        logging.getLogger("asyncio").setLevel(logging.ERROR)
        asyncio.run(_until_stopped(uvicorn.Server(config), listening, out))
    out.write("stopped\n")
    return 0
