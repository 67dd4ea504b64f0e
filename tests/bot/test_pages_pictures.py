"""Pictures on the site and on the try-it page: shown with their words, never in the way."""

import re
from collections.abc import AsyncIterator
from html import unescape

import pytest
import pytest_asyncio
from aiohttp import web
from aiohttp.test_utils import TestClient, TestServer

from bot.ask import ask
from bot.drawing import Card, CardRow, Cell
from bot.fronts.pages.pictures import picture_file
from bot.fronts.pages.server import application
from bot.fronts.pages.site import render_site
from bot.preferences import Preferences
from bot.reply import Picture

Client = TestClient[web.Request, web.Application]
DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
IMAGE = re.compile(r'<img class="picture" src="([^"]*)" alt="([^"]*)">')
PNG = b"\x89PNG\r\n"
# A row with a cell too few: what a mistake of our own would look like.
BROKEN = Card("a", "", "", ("one", "two"), (CardRow("row", (Cell("x"),)),))


@pytest_asyncio.fixture
async def client() -> AsyncIterator[Client]:
    async with TestClient(TestServer(application(per_minute=2))) as opened:
        yield opened


def test_every_picture_of_the_site_is_there_and_every_one_there_is_shown() -> None:
    site = render_site()
    shown = {
        (source, unescape(words))
        for name, content in site.items()
        if name.endswith(".html")
        for source, words in IMAGE.findall(content.decode())
    }
    assert {source for source, _ in shown} == {name for name in site if name.endswith(".png")}
    assert shown
    assert all(site[source].startswith(PNG) and len(words) > 60 for source, words in shown)


async def test_an_answer_on_the_try_it_page_has_its_picture(client: Client) -> None:
    page = await client.get("/try.html", params={"q": DISTANCE, "units": "cm"})
    [(address, words)] = IMAGE.findall(await page.text())
    picture = ask(DISTANCE, Preferences()).picture
    assert picture is not None
    assert unescape(words).startswith("Chart: How far the tube hangs")
    shown = await client.get("/" + unescape(address))
    assert shown.status == 200
    assert shown.content_type == "image/png"
    assert (await shown.read()).startswith(PNG)
    assert "default-src 'none'" in shown.headers["Content-Security-Policy"]


async def test_a_question_without_a_picture_shows_none(client: Client) -> None:
    page = await client.get("/try.html", params={"q": "convert 14in"})
    assert not IMAGE.findall(await page.text())
    assert (await client.get("/picture.png", params={"q": "convert 14in"})).status == 404


async def test_pictures_have_a_limit_of_their_own(client: Client) -> None:
    for status in (404, 404, 429):
        assert (await client.get("/picture.png", params={"q": "nonsense"})).status == status
    assert (await client.get("/try.html", params={"q": "convert 14in"})).status == 200


def test_a_picture_that_fails_does_not_cost_the_page(caplog: pytest.LogCaptureFixture) -> None:
    reply = ask(DISTANCE, Preferences())
    broken = reply.model_copy(update={"picture": Picture(alt="x", drawing=BROKEN)})
    assert picture_file(broken) is None
    assert len(caplog.records) == 1
