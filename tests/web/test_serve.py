"""The command as a person runs it."""

from __future__ import annotations

import os
import signal
import socket
import subprocess
import urllib.request

import pytest

from advisor.cli import main
from advisor.web import serve
from tests.web.serving import LONGEST_STOP, address_of, serving, start, stop


@pytest.mark.parametrize("port", ["many", "-1", "65536", "8e3", "99999999999", "", "٣"])
def test_a_port_that_is_none_is_refused(port: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["serve", f"--port={port}"])
    assert ended.value.code == 2
    assert f"{port!r} is no port: a whole number from 0 to 65535" in capsys.readouterr().err


@pytest.mark.slow
@pytest.mark.web
def test_a_port_in_use_is_named() -> None:
    with socket.socket() as taken:
        taken.bind((serve.HERE, 0))
        taken.listen()
        port = taken.getsockname()[1]
        process = start("--port", str(port))
        out, errors = process.communicate(timeout=LONGEST_STOP)
    assert process.returncode == 2
    assert out == ""
    assert errors == f"port {port} is in use; name another with --port, or --port 0 for any that is free\n"


def test_a_port_that_is_taken_is_a_wrong_input(capsys: pytest.CaptureFixture[str]) -> None:
    with socket.socket() as taken:
        taken.bind((serve.HERE, 0))
        taken.listen()
        port = taken.getsockname()[1]
        assert main(["serve", "--port", str(port)]) == 2
    assert f"port {port} is in use; name another with --port" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("number", "said"), [(13, "port 80 is not for an ordinary user"), (99, "port 80 cannot be had")]
)
def test_a_port_that_cannot_be_had_is_named(monkeypatch: pytest.MonkeyPatch, number: int, said: str) -> None:
    def refuse(*_: object) -> None:
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr(socket.socket, "bind", refuse)
    with pytest.raises(serve.PortFault, match=said):
        serve.listen(80)


def test_it_answers_on_this_machine_alone_and_stops_with_its_workers() -> None:
    with serving() as page:
        with urllib.request.urlopen(f"{page.address}/?work.material=ash&work.diameter=10in&work.length=3in") as got:
            assert got.status == 200
            assert "server" not in {name.lower() for name in got.headers}
            assert b"Never above" in got.read()
        workers = page.workers()
        assert len(workers) == serve.workers_here()
        with socket.socket() as outside, pytest.raises(OSError, match="refused"):
            outside.connect(("127.0.0.2", page.port))
    for pid in workers:
        with pytest.raises(ProcessLookupError):
            os.kill(pid, 0)


@pytest.mark.slow
@pytest.mark.web
@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
def test_it_ends_in_good_order(number: signal.Signals) -> None:
    process = start("--port", "0")
    address_of(process)
    with subprocess.Popen(["sleep", "0"]):  # Ctrl-C comes at any moment, also before the workers are up
        process.send_signal(number)
    out, errors = process.communicate(timeout=LONGEST_STOP)
    assert (process.returncode, out, errors) == (0, "stopped\n", "")


@pytest.mark.slow
@pytest.mark.web
def test_ctrl_c_twice_does_no_harm() -> None:
    process = start("--port", "0")
    address_of(process)
    process.send_signal(signal.SIGINT)
    code, _, errors = stop(process)
    assert (code, errors) == (0, "")


@pytest.mark.slow
@pytest.mark.web
def test_it_ends_without_a_traceback_while_somebody_is_still_sending() -> None:
    process = start("--port", "0")
    port = address_of(process)
    with socket.create_connection((serve.HERE, port)) as client:
        client.sendall(f"POST / HTTP/1.1\r\nHost: {serve.HERE}:{port}\r\nContent-Length: 20\r\n\r\nabc".encode())
        assert stop(process) == (0, "stopped\n", "")
