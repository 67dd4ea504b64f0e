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
from math import ceil

from aiohttp import web
from markupsafe import Markup

from bot.ask import ask
from bot.commands import COMMANDS
from bot.fronts.pages.pictures import Drawn
from bot.fronts.pages.site import render_page, render_site
from bot.fronts.studio import Missing, Studio
from bot.language.quantities import Units
from bot.operating.allowance import Allowance
from bot.preferences import Preferences
from bot.render.html import render_html

__all__ = [
    "HOST",
    "LONGEST_LINE",
    "MOST_CHARACTERS",
    "PER_MINUTE",
    "application",
    "listening",
    "serve",
]

HOST = "127.0.0.1"
MOST_CHARACTERS = 2000
PER_MINUTE = 30
# Room for the longest question with every character written as nine (%E2%82%AC).
LONGEST_LINE = MOST_CHARACTERS * 12 + 1024
_HEADERS = {
    "Content-Security-Policy": (
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; "
        "form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
    ),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
}
_NOT_KEPT = {"Cache-Control": "no-store"}
_TEXTS = {"html": "text/html", "css": "text/css", "js": "text/javascript", "svg": "image/svg+xml"}

log = logging.getLogger(__name__)


class _Site:
    """The handlers, with the site rendered beforehand and one thread that answers."""

    def __init__(
        self, files: Mapping[str, bytes], per_minute: int, clock: Callable[[], float]
    ) -> None:
        self._files = files
        self._allowance = Allowance(per_minute, clock)
        self._drawn = Drawn(Studio())
        self._thread = ThreadPoolExecutor(1, thread_name_prefix="ask")

    async def file(self, request: web.Request) -> web.Response:
        name = request.match_info["name"] or "index.html"
        content = self._files.get(name)
        if content is None:
            return await self._picture(name)
        kind = _TEXTS.get(name.rpartition(".")[2])
        if kind is None:
            return web.Response(body=content, content_type="image/png")
        return web.Response(body=content, content_type=kind, charset="utf-8")

    async def _picture(self, name: str) -> web.Response:
        """Return the picture of an answer given a while ago; the page stands without it."""
        found = await self._drawn.png(name)
        if found is None:
            raise web.HTTPNotFound
        if isinstance(found, Missing):
            return web.Response(status=503, text=f"{found.value}\n")
        return web.Response(body=found, content_type="image/png", headers=_NOT_KEPT)

    async def try_it(self, request: web.Request) -> web.Response:
        question = request.query.get("q", "").strip()
        units = request.query.get("units", "")
        if len(question) > MOST_CHARACTERS:
            told = f"That is {len(question)} characters; at most {MOST_CHARACTERS} fit."
            return _try_page(question[:MOST_CHARACTERS], units, told, status=413)
        if not question:
            return _try_page("", units)
        wait = self._allowance.take(request.remote or "")
        if wait:
            told = f"That was a lot of questions at once. Please try again in {ceil(wait)} s."
            return _try_page(question, units, told, status=429, retry_after=ceil(wait))
        chosen = Units(units) if units in set(Units) else None
        preferences = Preferences(units=chosen, forced_units=chosen)
        loop = asyncio.get_running_loop()
        answer = await loop.run_in_executor(self._thread, self._answer, question, preferences)
        return _try_page(question, units, answer=answer)

    def _answer(self, question: str, preferences: Preferences) -> Markup:
        reply = ask(question, preferences)
        return render_html(reply, image=self._drawn.put(reply.picture))

    async def close(self, _: web.Application) -> None:
        self._thread.shutdown(wait=False, cancel_futures=True)
        await self._drawn.close()


def application(
    per_minute: int = PER_MINUTE,
    clock: Callable[[], float] = time.monotonic,
    files: Mapping[str, bytes] | None = None,
) -> web.Application:
    """Return the server's application.

    ``clock`` counts seconds for the rate limit; ``files`` is the site where it was rendered
    before.
    """
    site = _Site(files or render_site(try_it=True), per_minute, clock)
    app = web.Application(middlewares=[_told_plainly])
    app.router.add_get("/try.html", site.try_it)
    app.router.add_get("/{name:[^/]*}", site.file)
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
        told = f"That could not be read. A question has at most {MOST_CHARACTERS} characters."
        response = _sorry(told, status)
        response.headers.update(_HEADERS)
        response.force_close()
        return response


def _try_page(
    question: str,
    units: str,
    told: str = "",
    status: int = 200,
    retry_after: int = 0,
    answer: Markup | None = None,
) -> web.Response:
    html = render_page(
        "try.html",
        try_it=True,
        question=question,
        units=units,
        told=told,
        answer=answer,
        commands=COMMANDS,
        most=MOST_CHARACTERS,
    )
    headers = dict(_NOT_KEPT)
    if retry_after:
        headers["Retry-After"] = str(retry_after)
    return web.Response(text=html, content_type="text/html", status=status, headers=headers)


async def _add_headers(_: web.Request, response: web.StreamResponse) -> None:
    response.headers.update(_HEADERS)


_Handler = Callable[[web.Request], Awaitable[web.StreamResponse]]


@web.middleware
async def _told_plainly(request: web.Request, handler: _Handler) -> web.StreamResponse:
    try:
        return await handler(request)
    except web.HTTPNotFound:
        return _sorry("There is no such page here.", 404)
    except web.HTTPMethodNotAllowed:
        return _sorry("This page can only be read.", 405)
    except web.HTTPException:
        raise
    except Exception:
        number = uuid.uuid4().hex[:8]
        log.exception("fault %s", number)
        return _sorry(f"Something broke on our side. Its number is {number}.", 500)


def _sorry(told: str, status: int) -> web.Response:
    html = render_page("sorry.html", try_it=True, told=told)
    return web.Response(text=html, content_type="text/html", status=status)
