"""The addresses of the page. Questions go to the workers; here they are only read, shown and remembered a while."""

from __future__ import annotations

import json
from base64 import b64decode
from collections import OrderedDict
from collections.abc import AsyncIterator, Awaitable, Callable, Mapping
from contextlib import asynccontextmanager
from typing import Any

from starlette.applications import Starlette
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import HTMLResponse, Response
from starlette.routing import Route

from advisor.web import pages
from advisor.web.asked import ASKS, Question, TooMuch, read_form
from advisor.web.compared import Comparison, changed_values, compare
from advisor.web.guards import Guards
from advisor.web.openapi import openapi
from advisor.web.workers import Pool, Unanswered

REMEMBERED = 200
FORM = "application/x-www-form-urlencoded"
SHEETS = {".html": "text/html", ".pdf": "application/pdf", ".svg": "image/svg+xml"}
STATIC = {"page.css": "text/css", "page.js": "text/javascript"}


class Told(Exception):  # noqa: N818 -- carries the response
    """A request ends here with this status and this text."""

    def __init__(self, status: int, body: Mapping[str, Any]) -> None:
        super().__init__(str(body))
        self.status = status
        self.body = body


def _json(body: Any, status: int = 200, name: str = "") -> Response:
    """ASCII, so that no sign in a case can break it."""
    text = json.dumps(body, allow_nan=False, indent=2 if name else None)
    return Response(text, status, _attached(name) if name else None, "application/json")


def _attached(name: str) -> dict[str, str]:
    return {"content-disposition": f'attachment; filename="{name}"'}


async def _body(request: Request, kind: str) -> bytes:
    """The body, when it is of the kind this address takes. Raises Told."""
    given = request.headers.get("content-type", "").partition(";")[0].strip().lower()
    if given != kind:
        raise Told(415, {"error": f"This address takes {kind}."})
    return await request.body()


def _asked(form: bytes) -> Question:
    try:
        return read_form(form)
    except TooMuch as fault:
        raise Told(422, {"error": str(fault)}) from None


class Desk:
    """Puts questions to the pool and keeps the last answers, so that a question asked again costs nothing."""

    def __init__(self, pool: Pool) -> None:
        self.pool = pool
        self.known: OrderedDict[str, dict[str, Any]] = OrderedDict()

    async def ask(self, task: Mapping[str, Any]) -> dict[str, Any]:
        """The reply to a task: a result or `problems`. Raises Told."""
        key = json.dumps(task)
        found = self.known.get(key)
        if found is None:
            try:
                found = await self.pool.ask(task)
            except Unanswered as why:
                raise Told(503, {"error": str(why)}) from None
            if "fault" in found:
                raise Told(500, {"error": f"A fault of the program ({found['fault']}): no advice was given."})
            self.known[key] = found
        self.known.move_to_end(key)
        while len(self.known) > REMEMBERED:
            self.known.popitem(last=False)
        return found

    async def answer(self, question: Question) -> dict[str, Any]:
        """The answer to a form."""
        return await self.ask({"do": "answer", "words": question.words, "parts": question.parts})

    async def compared(self, question: Question, found: Mapping[str, Any]) -> Comparison | None:
        """What the last change made of the answer before it, if that was one and to the same question."""
        before = _asked(question.before.encode())
        changed = changed_values(before, question)
        if not before.typed or not changed or before.ask != question.ask:
            return None
        old = await self.answer(before)
        return None if "problems" in old else compare(old["answer"], found["answer"], found["units"], changed)

    async def page(self, form: bytes, status: int) -> Response:
        """The whole page for a form; `status` where something in it is wrong."""
        question = _asked(form)
        if not question.typed:
            return HTMLResponse(pages.page_html(question, None, {}, None, ""))
        found = await self.answer(question)
        if "problems" in found:
            wrong = pages.by_field(found["problems"])
            return HTMLResponse(pages.page_html(question, None, wrong, None, question.before), status)
        compared = await self.compared(question, found)
        return HTMLResponse(pages.page_html(question, found, {}, compared, question.again))


Handler = Callable[[Desk, Request], Awaitable[Response]]


async def _visit(desk: Desk, request: Request) -> Response:
    return await desk.page(request.scope["query_string"], 200)


async def _post(desk: Desk, request: Request) -> Response:
    return await desk.page(await _body(request, FORM), 422)


async def _live(desk: Desk, request: Request) -> Response:
    """The pieces of the page that change while somebody types."""
    question = _asked(await _body(request, FORM))
    found = await desk.answer(question) if question.typed else {"problems": []}
    if "problems" in found:
        wrong = pages.by_field(found["problems"])
        shown = sorted(pages.shown_fields(question, None) | {name for name in wrong if name})
        return _json({"answer": None, "line": "", "problems": wrong, "shown": shown, "assumed": {}, "again": ""})
    compared = await desk.compared(question, found)
    return _json(
        {
            "answer": pages.answer_html(question, found, compared),
            "line": pages.headline_of(found),
            "problems": {},
            "shown": sorted(pages.shown_fields(question, found)),
            "assumed": pages.assumed_values(found),
            "again": question.again,
        }
    )


async def _case_download(desk: Desk, request: Request) -> Response:
    question = _asked(await _body(request, FORM))
    return _yaml(await desk.ask({"do": "case", "words": question.words}))


async def _answer_download(desk: Desk, request: Request) -> Response:
    found = await desk.answer(_asked(await _body(request, FORM)))
    return _json(found, 422) if "problems" in found else _json(found["answer"], name="answer.json")


async def _sheet_download(desk: Desk, request: Request) -> Response:
    ending = request.url.path.removeprefix("/sheet")
    question = _asked(await _body(request, FORM))
    found = await desk.ask({"do": "sheet", "words": question.words, "ending": ending})
    if "problems" in found:
        return _json(found, 422)
    return Response(b64decode(found["base64"]), headers=_attached(f"sheet{ending}"), media_type=SHEETS[ending])


def _yaml(found: Mapping[str, Any]) -> Response:
    if "problems" in found:
        return _json(found, 422)
    return Response(found["yaml"], headers=_attached("case.yaml"), media_type="application/yaml")


async def _case_text(request: Request) -> str:
    body = await _body(request, "application/json")
    return body.decode("utf-8", "replace")


async def _api_answer(desk: Desk, request: Request) -> Response:
    ask = request.query_params.get("ask", "advise")
    if ask not in ASKS:
        raise Told(422, {"error": f"ask is one of: {', '.join(ASKS)}"})
    text = await _case_text(request)
    found = await desk.ask({"do": "answer", "text": text, "parts": ASKS[ask][1]})
    return _json(found, 422) if "problems" in found else _json(found["answer"])


async def _api_case(desk: Desk, request: Request) -> Response:
    return _yaml(await desk.ask({"do": "case", "text": await _case_text(request)}))


async def _explain(desk: Desk, request: Request) -> Response:
    name = request.path_params["name"]
    found = await desk.ask({"do": "explain", "name": name})
    if "unknown" in found:
        raise Told(404, {"error": found["unknown"]})
    return HTMLResponse(pages.explain_html(name, found["text"]))


async def _what_is_it(desk: Desk, request: Request) -> Response:  # noqa: ARG001 -- every handler is called alike
    try:
        return HTMLResponse(pages.path_html(request.query_params.get("at", "start")))
    except KeyError:
        raise Told(404, {"error": "No such step; begin at /what-is-it."}) from None


async def _static(desk: Desk, request: Request) -> Response:  # noqa: ARG001 -- every handler is called alike
    name = request.path_params["name"]
    if name not in STATIC:
        raise Told(404, {"error": "No such file."})
    return Response((pages.HERE / "static" / name).read_bytes(), media_type=STATIC[name])


async def _openapi(desk: Desk, request: Request) -> Response:  # noqa: ARG001 -- every handler is called alike
    return _json(openapi())


ROUTES: tuple[tuple[str, str, Handler], ...] = (
    ("GET", "/", _visit),
    ("POST", "/", _post),
    ("POST", "/live", _live),
    ("POST", "/case.yaml", _case_download),
    ("POST", "/answer.json", _answer_download),
    *(("POST", f"/sheet{ending}", _sheet_download) for ending in SHEETS),
    ("POST", "/api/answer", _api_answer),
    ("POST", "/api/case", _api_case),
    ("GET", "/explain/{name}", _explain),
    ("GET", "/what-is-it", _what_is_it),
    ("GET", "/static/{name}", _static),
    ("GET", "/openapi.json", _openapi),
)


def _endpoints(desk: Desk) -> list[Route]:
    """One route for each address, so that a wrong method is told every one that would do."""
    by_path: dict[str, dict[str, Handler]] = {}
    for method, path, handler in ROUTES:
        by_path.setdefault(path, {})[method] = handler

    def endpoint(handlers: Mapping[str, Handler]) -> Callable[[Request], Awaitable[Response]]:
        async def run(request: Request) -> Response:
            method = "GET" if request.method == "HEAD" else request.method
            try:
                return await handlers[method](desk, request)
            except Told as told:
                return _json(told.body, told.status)
            except Exception as fault:  # the person gets a sentence, never a traceback
                return _json({"error": f"A fault of the program ({type(fault).__name__}): no advice was given."}, 500)

        return run

    return [Route(path, endpoint(handlers), methods=list(handlers)) for path, handlers in by_path.items()]


async def _http_fault(request: Request, fault: Exception) -> Response:  # noqa: ARG001 -- starlette calls it so
    assert isinstance(fault, HTTPException)
    answer = _json({"error": fault.detail}, fault.status_code)
    answer.headers.update(fault.headers or {})
    return answer


def build(pool: Pool, hosts: frozenset[str]) -> Guards:
    """The page over a pool of workers, answering to these Host headers alone."""

    @asynccontextmanager
    async def lifespan(app: Starlette) -> AsyncIterator[None]:  # noqa: ARG001 -- starlette calls it so
        await pool.start()
        yield
        await pool.stop()

    page = Starlette(routes=_endpoints(Desk(pool)), exception_handlers={HTTPException: _http_fault}, lifespan=lifespan)
    return Guards(page, hosts)
