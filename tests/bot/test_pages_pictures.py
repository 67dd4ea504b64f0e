"""Pictures on the site and on the try-it page: shown with their words, never in the way."""

import re
from collections.abc import AsyncIterator
from hashlib import sha256
from html import unescape
from io import BytesIO
from unittest.mock import AsyncMock

import PIL.Image
import pytest
import pytest_asyncio
from aiohttp import web
from aiohttp.test_utils import TestClient, TestServer

from bot import guide
from bot.drawing import Axis, Card, CardRow, Cell, Chart, Line, Place, Side
from bot.fronts.pages.edition import Edition, editions
from bot.fronts.pages.pictures import Album, Drawn
from bot.fronts.pages.server import application
from bot.fronts.pages.site import render_site
from bot.fronts.pages.sketches import sketch
from bot.render.html import heading_id
from bot.render.picture import MOST_BYTES
from bot.reply import Picture
from bot.serving.studio import Missing, Studio

Client = TestClient[web.Request, web.Application]
DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
IMAGE = re.compile(r'<img src="([^"]*\.png)" alt="([^"]*)"(?: width="(\d+)" height="(\d+)")?>')
PNG = b"\x89PNG\r\n"
SITE = render_site()
# A row with a cell too few: what a mistake of our own would look like.
BROKEN = Card("a", "", "", ("one", "two"), (CardRow("row", (Cell("x"),)),))


@pytest_asyncio.fixture
async def client() -> AsyncIterator[Client]:
    async with TestClient(TestServer(application(files=SITE))) as opened:
        yield opened


def drawing(number: int) -> Chart:
    line = Line("", (0.0, 1.0), (0.0, 1.0))
    return Chart(str(number), "", Axis("", 0.0, 1.0), Axis("", 0.0, 1.0), (line,))


def studio_of(outcome: bytes | Missing) -> AsyncMock:
    studio = AsyncMock(spec=Studio)
    studio.png.return_value = outcome
    return studio


# --- the site --------------------------------------------------------------------------------


def test_every_picture_of_the_site_is_there_and_every_one_there_is_shown() -> None:
    shown = {
        (name.rpartition("/")[0], source, unescape(words), int(width), int(height))
        for name, content in SITE.items()
        if name.endswith(".html")
        for source, words, width, height in IMAGE.findall(content.decode())
    }
    at = {f"{folder}/{source}".lstrip("/") for folder, source, *_ in shown}
    assert at == {name for name in SITE if name.endswith(".png")}
    assert {folder for folder, *_ in shown} == {"", "de"}
    assert len(shown) > 24
    for folder, source, words, width, height in shown:
        png = SITE[f"{folder}/{source}".lstrip("/")]
        assert source == f"picture-{sha256(png).hexdigest()[:16]}.png"
        assert PIL.Image.open(BytesIO(png)).size == (width, height)
        assert len(png) <= MOST_BYTES
        assert len(words) > 50


@pytest.mark.parametrize("folder", ["", "de/"])
@pytest.mark.parametrize("slug", [page.slug for page in guide.pages()])
def test_a_page_shows_its_figures_and_no_picture_twice(slug: str, folder: str) -> None:
    page = guide.page(slug, folder.rstrip("/") or guide.FIRST)
    html = SITE[f"{folder}{slug}.html"].decode()
    found = [source for source, *_ in IMAGE.findall(html)]
    assert len(found) == len(set(found))
    for figure in page.figures:
        _, _, rest = html.partition(f'<h2 id="{heading_id(figure.under)}">')
        part = rest.partition("<h2")[0]
        assert figure.caption in unescape(part)
        assert part.count("<img") == 1


@pytest.mark.parametrize("edition", editions(), ids=lambda edition: edition.language)
@pytest.mark.parametrize("which", guide.Sketch)
def test_a_sketch_says_in_words_what_it_shows_and_is_used(
    which: guide.Sketch, edition: Edition
) -> None:
    picture = sketch(which, edition.voice)
    assert isinstance(picture.drawing, Side)
    told: list[str] = [place.text for place in picture.drawing.places]
    told += [dimension.label.partition(":")[0] for dimension in picture.drawing.dimensions]
    assert told
    assert all(text in picture.alt for text in told)
    assert which in [figure.sketch for page in guide.pages() for figure in page.figures]


def test_the_numbered_places_of_a_sketch_lie_in_the_open() -> None:
    side = sketch(guide.Sketch.THERMOMETERS, editions()[0].voice).drawing
    assert isinstance(side, Side)
    surface, *air = side.places
    stone = side.blocks[0]
    assert stone.x0 < surface.x < stone.x1
    assert surface.y == stone.y1
    for place in air:
        assert 0.0 < place.x < side.width_m
        assert not any(within(place, b.x0, b.x1, b.y0, b.y1) for b in side.blocks)


def within(place: Place, x0: float, x1: float, y0: float, y1: float) -> bool:
    return x0 <= place.x <= x1 and y0 <= place.y <= y1


def test_a_picture_that_fails_does_not_cost_the_page(caplog: pytest.LogCaptureFixture) -> None:
    assert Album().put(Picture(alt="x", drawing=BROKEN)) is None
    assert len(caplog.records) == 1


def fails() -> Picture:
    raise ZeroDivisionError


def test_a_picture_that_cannot_be_worked_out_is_left_out(caplog: pytest.LogCaptureFixture) -> None:
    assert Album().put(Picture.later(fails)) is None
    assert Drawn(studio_of(PNG)).put(Picture.later(fails)) is None
    assert len(caplog.records) == 2


# --- the try-it page -------------------------------------------------------------------------


async def test_an_answer_on_the_try_it_page_has_its_picture(client: Client) -> None:
    page = await client.get("/try.html", params={"q": DISTANCE, "units": "cm"})
    [(address, words, *_)] = IMAGE.findall(await page.text())
    assert unescape(words).startswith("Chart: How far the tube hangs")
    shown = await client.get("/" + address)
    assert shown.status == 200
    assert shown.content_type == "image/png"
    assert (await shown.read()).startswith(PNG)
    assert "default-src 'none'" in shown.headers["Content-Security-Policy"]
    assert shown.headers["Cache-Control"] == "no-store"


async def test_a_question_without_a_picture_shows_none(client: Client) -> None:
    page = await client.get("/try.html", params={"q": "convert 14in"})
    assert not IMAGE.findall(await page.text())


async def test_only_what_was_answered_can_be_fetched(client: Client) -> None:
    for name in (f"drawn-{'0' * 32}.png", "drawn-.png", "picture.png"):
        assert (await client.get(f"/{name}")).status == 404


async def test_a_picture_that_cannot_be_drawn_costs_no_answer(
    client: Client, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(Studio, "png", studio_of(Missing.BUSY).png)
    page = await client.get("/try.html", params={"q": DISTANCE})
    text = await page.text()
    [(address, *_)] = IMAGE.findall(text)
    assert '<p class="answer">Hang it' in text
    assert (await client.get(f"/{address}")).status == 503


async def test_the_pictures_that_wait_are_bounded_and_the_latest_stay() -> None:
    drawn = Drawn(studio_of(PNG))
    images = [drawn.put(Picture(alt="x", drawing=drawing(number))) for number in range(65)]
    again = [image and await drawn.png(image.address) for image in images]
    assert again == [None] + [PNG] * 64


@pytest.mark.parametrize(
    ("outcome", "later"), [(Missing.FAILED, None), (Missing.BUSY, Missing.BUSY), (PNG, PNG)]
)
async def test_only_what_failed_is_not_tried_again(
    outcome: bytes | Missing, later: bytes | Missing | None
) -> None:
    drawn = Drawn(studio_of(outcome))
    image = drawn.put(Picture(alt="x", drawing=drawing(1)))
    assert image
    assert [await drawn.png(image.address) for _ in range(2)] == [outcome, later]
