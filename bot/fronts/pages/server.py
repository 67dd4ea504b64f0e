"""A small server on this computer: the site, and a page where a question is typed and answered.

It keeps nothing but a short count of questions per address. It is not made for the open
internet: it listens on 127.0.0.1.
"""

import asyncio
import logging
import time
import uuid
from collections import OrderedDict
from collections.abc import Awaitable, Callable
from concurrent.futures import ThreadPoolExecutor
from math import ceil

from aiohttp import web

from bot.ask import ask
from bot.commands import COMMANDS
from bot.fronts.pages.site import render_page, render_site
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.render.html import render_html
from bot.reply import Reply

__all__ = [
    "HOST",
    "LONGEST_LINE",
    "MOST_CHARACTERS",
    "PER_MINUTE",
    "Allowance",
    "application",
    "serve",
]

HOST = "127.0.0.1"
MOST_CHARACTERS = 2000
PER_MINUTE = 30
_MOST_ADDRESSES = 1000
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
_TYPES = {"html": "text/html", "css": "text/css", "js": "text/javascript", "svg": "image/svg+xml"}

log = logging.getLogger(__name__)


class Allowance:
    """A number of questions per minute for each address: a bucket that refills steadily."""

    def __init__(self, per_minute: int, clock: Callable[[], float] = time.monotonic) -> None:
        self._most = float(per_minute)
        self._per_second = per_minute / 60.0
        self._clock = clock
        self._left: OrderedDict[str, tuple[float, float]] = OrderedDict()

    def take(self, address: str) -> float:
        """Take one question; return 0 when allowed, otherwise the seconds to wait."""
        now = self._clock()
        left, then = self._left.pop(address, (self._most, now))
        left = min(self._most, left + (now - then) * self._per_second)
        wait = 0.0 if left >= 1.0 else (1.0 - left) / self._per_second
        self._left[address] = (left if wait else left - 1.0, now)
        if len(self._left) > _MOST_ADDRESSES:
            self._left.popitem(last=False)
        return wait


class _Site:
    """The handlers, with the site rendered once and one thread that answers."""

    def __init__(self, per_minute: int, clock: Callable[[], float]) -> None:
        self._files = render_site(try_it=True)
        self._allowance = Allowance(per_minute, clock)
        self._thread = ThreadPoolExecutor(1, thread_name_prefix="ask")

    async def file(self, request: web.Request) -> web.Response:
        name = request.match_info["name"] or "index.html"
        content = self._files.get(name)
        if content is None:
            raise web.HTTPNotFound
        kind = _TYPES[name.rpartition(".")[2]]
        return web.Response(body=content, content_type=kind, charset="utf-8")

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
        reply = await loop.run_in_executor(self._thread, ask, question, preferences)
        return _try_page(question, units, reply=reply)

    async def close(self, _: web.Application) -> None:
        self._thread.shutdown(wait=False, cancel_futures=True)


def application(
    per_minute: int = PER_MINUTE, clock: Callable[[], float] = time.monotonic
) -> web.Application:
    """Return the server's application; ``clock`` counts seconds for the rate limit."""
    site = _Site(per_minute, clock)
    app = web.Application(middlewares=[_told_plainly])
    app.router.add_get("/try.html", site.try_it)
    app.router.add_get("/{name:[^/]*}", site.file)
    app.on_response_prepare.append(_add_headers)
    app.on_cleanup.append(site.close)
    return app


def serve(port: int = 8040, say: Callable[[str], object] = print) -> None:
    """Serve the site and the try-it page on this computer until interrupted."""

    def started(*_: object) -> None:
        say(f"The guide is at http://{HOST}:{port}/ (stop with Ctrl+C).")

    web.run_app(
        application(),
        host=HOST,
        port=port,
        access_log=None,
        print=started,
        max_line_size=LONGEST_LINE,
        max_field_size=LONGEST_LINE,
    )


def _try_page(
    question: str,
    units: str,
    told: str = "",
    status: int = 200,
    retry_after: int = 0,
    reply: Reply | None = None,
) -> web.Response:
    html = render_page(
        "try.html",
        try_it=True,
        question=question,
        units=units,
        told=told,
        answer=render_html(reply) if reply else None,
        commands=COMMANDS,
        most=MOST_CHARACTERS,
    )
    headers = {"Cache-Control": "no-store"}
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
