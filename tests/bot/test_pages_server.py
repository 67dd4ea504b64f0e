"""The small server: pages, answers, limits and headers, over a real socket on this computer."""

import asyncio
import html
import logging
import re
from collections.abc import AsyncIterator
from itertools import pairwise
from urllib.parse import quote

import aiohttp
import html5lib
import pytest
import pytest_asyncio
from aiohttp import web
from aiohttp.test_utils import TestClient, TestServer

from bot.fronts.pages import server
from bot.fronts.pages.server import application
from bot.fronts.pages.trying import MOST_CHARACTERS
from tests.bot.site_read import SERVED

Client = TestClient[web.Request, web.Application]
HEADINGS = {f"h{level}" for level in range(1, 7)}
DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"


class Clock:
    """A clock that is set by hand."""

    now = 0.0

    def __call__(self) -> float:
        return self.now


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest_asyncio.fixture
async def client(clock: Clock) -> AsyncIterator[Client]:
    async with TestClient(TestServer(application(6, clock, SERVED))) as opened:
        yield opened


async def asked(client: Client, question: str, units: str = "") -> tuple[int, str]:
    response = await client.get("/try.html", params={"q": question, "units": units})
    return response.status, (await response.text()).replace("\u00a0", " ")


async def test_the_first_page_and_the_assets_are_served_with_their_types(client: Client) -> None:
    for path, kind in (
        ("/", "text/html"),
        ("/index.html", "text/html"),
        ("/screens.html", "text/html"),
        ("/style.css", "text/css"),
        ("/search.js", "text/javascript"),
        ("/icon.svg", "image/svg+xml"),
    ):
        response = await client.get(path)
        assert response.status == 200
        assert response.content_type == kind


@pytest.mark.parametrize("path", ["/", "/try.html", "/try.html?q=help", "/style.css", "/none"])
async def test_every_response_carries_the_security_headers(client: Client, path: str) -> None:
    headers = (await client.get(path)).headers
    policy = headers["Content-Security-Policy"]
    assert "default-src 'none'" in policy
    assert "unsafe" not in policy
    assert "http" not in policy
    assert headers["X-Content-Type-Options"] == "nosniff"
    assert headers["Referrer-Policy"] == "no-referrer"
    assert "Set-Cookie" not in headers


async def test_a_question_is_answered_and_stays_in_the_field(client: Client) -> None:
    status, html = await asked(client, DISTANCE)
    assert status == 200
    assert '<article class="reply reply-ok" ' in html
    assert f">{DISTANCE}</textarea>" in html


@pytest.mark.parametrize("question", ["", DISTANCE, "distance tube:pony", "card animal:boa"])
async def test_the_page_of_an_answer_is_valid_and_its_links_lead_somewhere(
    client: Client, question: str
) -> None:
    _, html = await asked(client, question)
    parsed = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False).parse(html)
    levels = [int(e.tag[1]) for e in parsed.find("body/div/main").iter() if e.tag in HEADINGS]
    assert levels[0] == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))
    for element in parsed.iter("a"):
        name = element.attrib["href"].partition("#")[0].partition("?")[0]
        assert name in ("", "try.html", "de/try.html", "steps.html") or name in SERVED


async def test_the_unit_shown_first_can_be_chosen(client: Client) -> None:
    _, inches = await asked(client, "convert 14in", "in")
    _, centimetres = await asked(client, DISTANCE, "cm")
    assert "14 in" in inches
    assert '<option value="cm" selected>' in centimetres
    answer = centimetres.split('class="answer">')[1].split("</p>")[0]
    assert answer.index(" cm") < answer.index(" in)")


@pytest.mark.parametrize(
    ("page", "question", "head"),
    [
        ("/de/try.html", DISTANCE, "von Röhre bis Rücken"),
        ("/de/try.html", "wie warm braucht es eine Bartagame", "Bartagame braucht"),
        ("/try.html", "wie warm braucht es eine Bartagame", "Bartagame braucht"),
        ("/try.html", DISTANCE, "Hang it"),
    ],
)
async def test_the_folder_says_the_language_and_else_the_question_does(
    client: Client, page: str, question: str, head: str
) -> None:
    html = await (await client.get(page, params={"q": question})).text()
    assert head in html.split('class="answer">')[1].split("</article>")[0].replace("\u00a0", " ")
    german = page.startswith("/de/")
    assert ("Deine Frage" in html) == german
    parsed = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False).parse(html)
    twin = parsed.find("body/header//a[@hreflang]").attrib["href"]
    path = "/try.html" if german else "/de/try.html"
    other = await (await client.get(twin if not german else twin.removeprefix(".."))).text()
    assert twin.partition("?")[0].lstrip("./") == path.lstrip("/")
    assert f">{question}</textarea>" in other


async def test_a_german_question_in_the_german_folder_shows_centimetres_first(
    client: Client,
) -> None:
    html = await (await client.get("/de/try.html", params={"q": DISTANCE})).text()
    answer = html.split('class="answer">')[1].split("</p>")[0].replace("\u00a0", " ")
    assert answer.index(" cm") < answer.index(" in)")


async def test_a_folder_is_found_and_its_first_page_with_it(client: Client) -> None:
    for path in ("/de", "/de/", "/de/index.html"):
        response = await client.get(path)
        assert response.status == 200
        assert '<html lang="de">' in await response.text()


@pytest.mark.parametrize(
    ("method", "path", "params", "status", "told"),
    [
        ("GET", "/de/nichts.html", {}, 404, "Diese Seite gibt es hier nicht."),
        ("POST", "/de/try.html", {}, 405, "Diese Seite kann man nur lesen."),
        ("GET", "/de/try.html", {"q": "x" * 2001}, 413, "Das sind 2001 Zeichen;"),
    ],
)
async def test_what_goes_wrong_is_told_in_the_language_of_the_folder(
    client: Client, method: str, path: str, params: dict[str, str], status: int, told: str
) -> None:
    response = await client.request(method, path, params=params)
    assert response.status == status
    assert told in await response.text()


async def test_a_question_that_is_not_understood_gets_its_sentence(client: Client) -> None:
    status, html = await asked(client, "distance tube:pony")
    assert status == 200
    assert '<article class="reply reply-problem" ' in html


@pytest.mark.parametrize(
    "hostile",
    [
        "<script>alert(1)</script>",
        '"><img src=x onerror=alert(1)>',
        "</textarea><b>",
        "\x00\x1b[31m",
    ],
)
async def test_what_is_typed_is_shown_as_text(client: Client, hostile: str) -> None:
    for question in (hostile, f"distance tube:{hostile}", f"convert {hostile}"):
        _, html = await asked(client, question)
        assert hostile not in html or "<" not in hostile
        assert "<script>alert" not in html
        assert "<img src=x" not in html


async def test_a_unit_that_does_not_exist_is_ignored(client: Client) -> None:
    status, html = await asked(client, "convert 14in", '"><b>')
    assert status == 200
    assert '"><b>' not in html


async def test_the_longest_question_fits_and_one_more_character_does_not(client: Client) -> None:
    status, html = await asked(client, "x" * MOST_CHARACTERS)
    assert status == 200
    assert "reply-problem" in html
    status, html = await asked(client, "x" * (MOST_CHARACTERS + 1))
    assert status == 413
    assert f"That is {MOST_CHARACTERS + 1} characters; at most {MOST_CHARACTERS} fit." in html


async def test_too_many_questions_are_told_when_to_try_again(client: Client, clock: Clock) -> None:
    for _ in range(6):
        assert (await asked(client, "help"))[0] == 200
    response = await client.get("/try.html", params={"q": "help"})
    assert response.status == 429
    assert response.headers["Retry-After"] == "10"
    assert "Try again in 10 s." in await response.text()
    assert (await client.get("/screens.html")).status == 200
    assert (await client.get("/try.html")).status == 200
    clock.now += 10
    assert (await asked(client, "help"))[0] == 200
    assert (await asked(client, "help"))[0] == 429


@pytest.mark.parametrize(
    "path", ["/nothing.html", "/server.py", "/..%2f..%2fpyproject.toml", "/a/b.html", "/%00"]
)
async def test_a_page_that_does_not_exist_is_a_plain_404(client: Client, path: str) -> None:
    response = await client.get(path)
    assert response.status == 404
    assert "There is no such page here." in await response.text()


async def test_the_site_can_only_be_read(client: Client) -> None:
    for method in ("POST", "PUT", "DELETE"):
        response = await client.request(method, "/try.html", data=b"x" * 10_000)
        assert response.status == 405
        assert "This page can only be read." in await response.text()


async def test_a_fault_of_ours_is_told_by_a_number_that_the_log_knows(
    client: Client, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError("a secret of the house")

    monkeypatch.setattr(server, "ask", broken)
    with caplog.at_level(logging.ERROR):
        status, html = await asked(client, "help")
    assert status == 500
    assert "a secret of the house" not in html
    number = html.split("Its number is ")[1].split(".")[0]
    assert f"fault {number}" in caplog.text


async def test_the_longest_question_fits_the_request_line_in_any_alphabet() -> None:
    question = quote("€" * MOST_CHARACTERS)
    async with (
        server.listening(application(files=SERVED)) as port,
        aiohttp.ClientSession() as session,
    ):
        address = f"http://{server.HOST}:{port}/try.html?q={question}"
        response = await session.get(address, max_line_size=server.LONGEST_LINE)
        assert response.status == 200


UNREADABLE = {
    "a line that is too long": b"GET /try.html?q=" + b"mywords" * 5000 + b" HTTP/1.1\r\n\r\n",
    "a header that is too long": b"GET / HTTP/1.1\r\nX: " + b"mywords" * 5000 + b"\r\n\r\n",
    "a wrong length": b"GET / HTTP/1.1\r\nContent-Length: mywords\r\n\r\n",
    "no address": b"GET http://[mywords HTTP/1.1\r\n\r\n",
    "no HTTP": b"mywords\r\n\r\n",
    "another protocol": b"\x16\x03\x01mywords\r\n\r\n",
}


@pytest.mark.parametrize("sent", UNREADABLE.values(), ids=UNREADABLE.keys())
async def test_what_cannot_be_read_gets_a_plain_page_and_leaves_no_word_in_the_log(
    sent: bytes, caplog: pytest.LogCaptureFixture
) -> None:
    async with server.listening(application(files=SERVED)) as port:
        reader, writer = await asyncio.open_connection(server.HOST, port)
        with caplog.at_level(logging.INFO):
            writer.write(sent)
            answer = (await reader.read()).decode()
        writer.close()
        await writer.wait_closed()
    head, _, page = answer.partition("\r\n\r\n")
    assert head.startswith("HTTP/1.0 400 ")
    assert "default-src 'none'" in head
    assert "That could not be read." in page
    assert "mywords" not in answer
    assert "mywords" not in caplog.text
    assert "Traceback" not in caplog.text


async def test_a_conversation_goes_on_in_what_the_page_itself_carries(client: Client) -> None:
    first = await client.get("/try.html", params={"q": "how far for a 12% t5 for my beardie"})
    found = re.search(r'name="with" value="([^"]+)"', await first.text())
    assert found is not None
    carried = html.unescape(found[1])
    second = await client.get("/try.html", params={"q": "its on a mesh", "with": carried})
    told = (await second.text()).replace("\u00a0", " ")
    assert "15 in (38 cm)" in told
    assert "animal: bearded dragon; tube: 12%" in told
    anew = await client.get("/try.html", params={"q": "its on a mesh", "with": "[" * 2900})
    assert "15 in (38 cm)" not in (await anew.text()).replace("\u00a0", " ")


async def test_an_offer_of_the_page_is_a_link_that_carries_the_conversation(client: Client) -> None:
    asked = await client.get("/try.html", params={"q": "my gecko is cold what now"})
    found = re.search(r'<a href="(try\.html\?q=needs[^"]+)"', await asked.text())
    assert found is not None
    taken = await client.get("/" + html.unescape(found[1]))
    assert "leopard gecko needs" in await taken.text()
