"""The server of the pages, with hostile questions in its form and hostile bytes on its line."""

import asyncio
import logging
from functools import cache
from html.parser import HTMLParser
from urllib.parse import quote

from bot.commands import COMMANDS
from bot.fronts.pages import server, trying

__all__ = ["asked_on_the_page", "sent_to_the_server"]

_CLOSING = b" HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n"
_PATIENCE_S = 0.3


class _Server:
    """A server that runs as long as the process, and what it logs that should not be."""

    def __init__(self) -> None:
        self.loop = asyncio.new_event_loop()
        self.listening = server.listening(server.application(per_minute=10**9))
        self.port = self.loop.run_until_complete(self.listening.__aenter__())
        self.complaints: list[str] = []
        watch = logging.Handler(logging.WARNING)
        watch.emit = lambda record: self.complaints.append(record.getMessage())  # type: ignore[method-assign]
        logging.getLogger().addHandler(watch)
        benign = [
            "",
            "banana",
            "enclosure:43",
            "my lamp is smoking",
            "x" * (trying.MOST_CHARACTERS + 1),
        ]
        benign += [example for command in COMMANDS for example in command.examples]
        self.forms = {form for text in benign for form in _forms(self.page(text))}

    def page(self, question: str) -> str:
        """Return the page that answers a question."""
        address = quote(question, safe="", errors="replace").encode()
        head, _, body = self.sent(b"GET /try.html?q=%s" % address + _CLOSING)
        too_long = len(question) > trying.MOST_CHARACTERS
        assert head.split()[1] in ((b"413", b"400") if too_long else (b"200",)), head
        return body.decode()

    def sent(self, sent: bytes, patience_s: float = 60.0) -> tuple[bytes, bytes, bytes]:
        """Return head, separator and body of what comes back."""
        return self.loop.run_until_complete(self._exchange(sent, patience_s))

    async def _exchange(self, sent: bytes, patience_s: float) -> tuple[bytes, bytes, bytes]:
        reader, writer = await asyncio.open_connection(server.HOST, self.port)
        try:
            writer.write(sent)
            async with asyncio.timeout(patience_s):
                return (await reader.read()).partition(b"\r\n\r\n")
        except (ConnectionError, TimeoutError):
            # It hung up, or it waits for the rest of what was promised.
            return b"", b"", b""
        finally:
            writer.close()


def asked_on_the_page(_: int, text: str) -> None:
    """Ask on the page: every tag that comes back is one of the page's own."""
    odd = _forms(_served().page(text)) - _served().forms
    assert not odd, odd
    assert _served().complaints == []


def sent_to_the_server(number: int, text: str) -> None:
    """Send anything to the server: it answers in HTTP or hangs up, and complains of nothing."""
    beginnings = (b"", b"GET /", b"GET /try.html?q=", b"GET / HTTP/1.1\r\nHost: x\r\n")
    ends = (_CLOSING, b"\r\n\r\nGET /" + _CLOSING)
    beginning, end = beginnings[number % 4], ends[number // 4 % 2]
    sent = beginning + text.encode("utf-8", "surrogatepass") + end
    head, _, _ = _served().sent(sent, _PATIENCE_S)
    assert not head or head.startswith(b"HTTP/"), head
    assert head.split(maxsplit=2)[1:2] != [b"500"], head
    assert _served().complaints == []


@cache
def _served() -> _Server:
    return _Server()


def _forms(page: str) -> set[tuple[str, tuple[str, ...]]]:
    """Return every tag of a page with the names of its attributes."""
    found: set[tuple[str, tuple[str, ...]]] = set()

    class Reader(HTMLParser):
        def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
            found.add((tag, tuple(name for name, _ in attrs)))

    Reader().feed(page)
    return found
