"""A small server on this computer: the site, and a page where a question is typed and answered.

It keeps nothing but a short count of questions per address. It is not made for the open
internet: it listens on 127.0.0.1.
"""

import asyncio
import logging
import signal
import time
import uuid
from collections.abc import AsyncIterator, Awaitable, Callable, Mapping
from concurrent.futures import ThreadPoolExecutor
from contextlib import asynccontextmanager
from dataclasses import replace
from math import ceil

from aiohttp import web
from markupsafe import Markup

from bot.ask import ask
from bot.dialogue import Dialogue, turn
from bot.facts import Say
from bot.fronts.pages.edition import Edition, editions
from bot.fronts.pages.found import find
from bot.fronts.pages.pictures import inline, parted
from bot.fronts.pages.site import SEARCH, Site, search_page
from bot.fronts.pages.sketches import sketch
from bot.fronts.pages.stepping import steps_page
from bot.fronts.pages.trail import STEPS, Trail
from bot.fronts.pages.trying import (
    MOST_CARRIED,
    MOST_CHARACTERS,
    NOT_KEPT,
    SHEET,
    TRY,
    PageFault,
    PageMost,
    PageTooLong,
    PageWait,
    TryPage,
)
from bot.guide import Sketch
from bot.preferences import LANGUAGES
from bot.render.html import render_html
from bot.serving.allowance import Allowance

__all__ = [
    "HOST",
    "LONGEST_LINE",
    "PER_MINUTE",
    "application",
    "listening",
    "serve",
]

HOST = "127.0.0.1"
PER_MINUTE = 30
_LONGEST_SEARCH = 100
# Room for the longest question with every character written as nine (%E2%82%AC).
LONGEST_LINE = (MOST_CHARACTERS + MOST_CARRIED) * 12 + 1024
_HEADERS = {
    "Content-Security-Policy": (
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self'; "
        "form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
    ),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
}
_TEXTS = {
    "html": "text/html",
    "css": "text/css",
    "js": "text/javascript",
    "svg": "image/svg+xml",
    "webmanifest": "application/manifest+json",
}
_OTHERS = {"ttf": "font/ttf", "png": "image/png", "zip": "application/zip"}

log = logging.getLogger(__name__)


class _Site:
    """The handlers, with one thread that answers and makes the pages of the site."""

    def __init__(
        self, files: Mapping[str, bytes], per_minute: int, clock: Callable[[], float]
    ) -> None:
        self._files = files
        self._allowance = Allowance(per_minute, clock)
        self._thread = ThreadPoolExecutor(1, thread_name_prefix="ask")

    async def file(self, request: web.Request) -> web.Response:
        name = request.match_info["name"]
        if name in LANGUAGES:
            raise web.HTTPMovedPermanently(f"/{name}/")
        if not name or name.endswith("/"):
            name += "index.html"
        loop = asyncio.get_running_loop()
        content = await loop.run_in_executor(self._thread, self._files.get, name)
        if content is None:
            raise web.HTTPNotFound
        ending = name.rpartition(".")[2]
        if kind := _OTHERS.get(ending):
            return web.Response(body=content, content_type=kind)
        return web.Response(body=content, content_type=_TEXTS[ending], charset="utf-8")

    async def search(self, request: web.Request) -> web.Response:
        """Return the page of what was looked up, and of everything where nothing was."""
        typed, edition = request.query.get("q", "").strip()[:_LONGEST_SEARCH], _edition(request)
        found = await asyncio.get_running_loop().run_in_executor(self._thread, find, typed, edition)
        html = search_page(edition, typed, found)
        return web.Response(text=html, content_type="text/html")

    async def try_it(self, request: web.Request) -> web.Response:
        page = TryPage(
            _edition(request),
            request.query.get("q", "").strip(),
            request.query.get("units", ""),
            request.query.get("with", ""),
        )
        if not page.question:
            return page.shown()
        count = len(page.question)
        if count > MOST_CHARACTERS:
            cut = replace(page, question=page.question[:MOST_CHARACTERS])
            return cut.shown(Say("page-too-long", PageTooLong(count, MOST_CHARACTERS)), status=413)
        wait = self._allowance.take(request.remote or "")
        if wait:
            return page.shown(Say("page-wait", PageWait(ceil(wait))), 429, ceil(wait))
        loop = asyncio.get_running_loop()
        answer, after = await loop.run_in_executor(self._thread, self._answer, page)
        if answer is None:
            return page.shown(Say("door-thanks"), after=after)
        return page.shown(answer=answer, after=after)

    async def steps(self, request: web.Request) -> web.Response:
        """Return the next step of the form that asks one thing at a time."""
        edition, trail = _edition(request), Trail.of(request.query.items())
        wait = self._allowance.take(request.remote or "") if trail.items else 0.0
        if wait:
            told = Say("page-wait", PageWait(ceil(wait)))
            response = _sorry(edition, told, 429)
            response.headers["Retry-After"] = str(ceil(wait))
            return response
        loop = asyncio.get_running_loop()
        html = await loop.run_in_executor(self._thread, steps_page, edition, trail)
        return web.Response(text=html, content_type="text/html", headers=NOT_KEPT)

    async def sheet(self, request: web.Request) -> web.Response:
        """Return the care sheet of a question, as a page to print."""
        page = TryPage(
            _edition(request),
            request.query.get("q", "").strip()[:MOST_CHARACTERS],
            request.query.get("units", ""),
        )
        wait = self._allowance.take(request.remote or "")
        if wait:
            return page.shown(Say("page-wait", PageWait(ceil(wait))), 429, ceil(wait))
        loop = asyncio.get_running_loop()
        reply = await loop.run_in_executor(self._thread, page.replied)
        picture, lines = await loop.run_in_executor(self._thread, parted, reply.sheet)
        if picture is None:
            return page.shown(Say("page-sheet-none"))
        return page.sheet(reply, picture, lines)

    def _answer(self, page: TryPage) -> tuple[Markup | None, Dialogue]:
        """Return the answer and the conversation after it; none to who only says thanks."""
        reply, dialogue = turn(page.dialogue, page.question, page.preferences, ask)
        if reply is None:
            return None, dialogue
        return render_html(
            reply, picture=inline(reply.picture), sheet=page.sheet_of(reply)
        ), dialogue

    async def close(self, _: web.Application) -> None:
        self._thread.shutdown(wait=False, cancel_futures=True)


def application(
    per_minute: int = PER_MINUTE,
    clock: Callable[[], float] = time.monotonic,
    files: Mapping[str, bytes] | None = None,
) -> web.Application:
    """Return the server's application.

    ``clock`` counts seconds for the rate limit; ``files`` is the site where it was made before.
    """
    site = _Site(files or Site(try_it=True), per_minute, clock)
    app = web.Application(middlewares=[_told_plainly])
    for edition in editions(try_it=True):
        app.router.add_get(f"/{edition.folder}{TRY}", site.try_it)
        app.router.add_get(f"/{edition.folder}{STEPS}", site.steps)
        app.router.add_get(f"/{edition.folder}{SEARCH}", site.search)
        app.router.add_get(f"/{edition.folder}{SHEET}", site.sheet)
    app.router.add_get("/{name:.*}", site.file)
    app.on_response_prepare.append(_add_headers)
    app.on_cleanup.append(site.close)
    return app


def serve(port: int = 8040, say: Callable[[str], object] = print) -> None:
    """Serve the site and the try-it page on this computer until interrupted."""
    asyncio.run(_serve(port, say))


async def _serve(port: int, say: Callable[[str], object]) -> None:
    stopped = asyncio.Event()
    for number in (signal.SIGINT, signal.SIGTERM):
        asyncio.get_running_loop().add_signal_handler(number, stopped.set)
    async with listening(application(), port):
        say(f"The guide is at http://{HOST}:{port}/ (stop with Ctrl+C).")
        await stopped.wait()


@asynccontextmanager
async def listening(app: web.Application, port: int = 0) -> AsyncIterator[int]:
    """Serve an application on this computer until the block ends; give its port."""
    runner = web.AppRunner(app)
    await runner.setup()
    manager = runner.server
    assert manager is not None
    loop = asyncio.get_running_loop()
    try:
        server = await loop.create_server(lambda: _Connection(manager, loop), HOST, port)
        try:
            yield server.sockets[0].getsockname()[1]
        finally:
            server.close()
    finally:
        await runner.cleanup()


class _Connection(web.RequestHandler):
    """A connection on which even what is not HTTP gets a plain page, and no word of it a log."""

    __slots__ = ()

    def __init__(self, manager: web.Server, loop: asyncio.AbstractEventLoop) -> None:
        super().__init__(
            manager,
            loop=loop,
            access_log=None,  # type: ignore[arg-type]  # none is allowed; the type is too narrow
            max_line_size=LONGEST_LINE,
            max_field_size=LONGEST_LINE,
        )

    def handle_error(
        self,
        request: web.BaseRequest,
        status: int = 500,
        exc: BaseException | None = None,
        message: str | None = None,
    ) -> web.StreamResponse:
        """Return the page for a request that could not be read."""
        if status >= 500:
            return super().handle_error(request, status, exc, message)
        log.info("a request could not be read (%s)", type(exc).__name__)
        told = Say("page-unread", PageMost(MOST_CHARACTERS))
        response = _sorry(editions(try_it=True)[0], told, status)
        response.headers.update(_HEADERS)
        response.force_close()
        return response


def _edition(request: web.BaseRequest) -> Edition:
    """Return the edition in whose folder a page was asked for."""
    first, *others = editions(try_it=True)
    return next((e for e in others if request.path.startswith(f"/{e.folder}")), first)


async def _add_headers(_: web.Request, response: web.StreamResponse) -> None:
    response.headers.update(_HEADERS)


_Handler = Callable[[web.Request], Awaitable[web.StreamResponse]]


@web.middleware
async def _told_plainly(request: web.Request, handler: _Handler) -> web.StreamResponse:
    edition = _edition(request)
    try:
        return await handler(request)
    except web.HTTPNotFound:
        return _sorry(edition, Say("page-missing"), 404)
    except web.HTTPMethodNotAllowed:
        return _sorry(edition, Say("page-read-only"), 405)
    except web.HTTPException:
        raise
    except Exception:
        number = uuid.uuid4().hex[:8]
        log.exception("fault %s", number)
        return _sorry(edition, Say("page-fault", PageFault(number)), 500)


def _sorry(edition: Edition, told: Say, status: int) -> web.Response:
    picture = inline(sketch(Sketch.LAYOUT, edition.voice))
    html = edition.page("sorry.html", "index.html", told=edition.say(told), picture=picture)
    return web.Response(text=html, content_type="text/html", status=status)
