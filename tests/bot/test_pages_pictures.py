"""Pictures on the site and on the try-it page: shown with their words, never in the way."""

import re
from collections.abc import AsyncIterator
from html import unescape

import pytest
import pytest_asyncio
from aiohttp import web
from aiohttp.test_utils import TestClient, TestServer

from bot import guide
from bot.drawing import Card, CardRow, Cell, Place, Side
from bot.fronts.pages.edition import Edition, editions
from bot.fronts.pages.pictures import inline
from bot.fronts.pages.server import application
from bot.fronts.pages.sketches import sketch
from bot.render.html import heading_id
from bot.render.picture.inks import Ink
from bot.reply import Picture
from tests.bot.site_read import SITE

Client = TestClient[web.Request, web.Application]
DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
DRAWN = re.compile(
    r'<svg [^>]*aria-labelledby="(picture-[0-9a-f]+)-title"[^>]*class="noon-picture"[^>]*>'
    r'<title id="([^"]+)">([^<]*)</title>.*?</svg>'
)
INKS = re.compile(r"var\(--p-([a-z-]+)\)")
MOST_OF_A_PAGE = 300_000
# A row with a cell too few: what a mistake of our own would look like.
BROKEN = Card("a", "", "", ("one", "two"), (CardRow("row", (Cell("x"),)),))


@pytest_asyncio.fixture
async def client() -> AsyncIterator[Client]:
    async with TestClient(TestServer(application(files=SITE))) as opened:
        yield opened


# --- the site --------------------------------------------------------------------------------


@pytest.mark.slow
def test_every_picture_says_what_it_shows_and_wears_the_inks_of_its_page() -> None:
    known = {ink.value.replace("_", "-") for ink in Ink}
    styles = SITE["inks.css"].decode()
    shown = 0
    for name, content in SITE.items():
        if not name.endswith(".html"):
            continue
        html = content.decode()
        assert len(content) < MOST_OF_A_PAGE, name
        for found in DRAWN.finditer(html):
            shown += 1
            assert found[2] == f"{found[1]}-title"
            assert len(unescape(found[3])) > 50
            used = set(INKS.findall(found[0]))
            assert used <= known
            assert all(f"--p-{ink}:" in styles for ink in used)
    assert shown > 24
    assert [name for name in SITE if name.endswith(".png")] == ["icon.png"]


def test_the_letters_of_the_pictures_come_along() -> None:
    for name in re.findall(r'url\("([^"]+)"\)', SITE["style.css"].decode()):
        assert SITE[name].startswith(b"\x00\x01\x00\x00")


@pytest.mark.parametrize("folder", ["", "de/"])
@pytest.mark.parametrize("slug", [page.slug for page in guide.pages()])
def test_a_page_shows_its_figures_and_no_picture_twice(slug: str, folder: str) -> None:
    page = guide.page(slug, folder.rstrip("/") or guide.FIRST)
    html = SITE[f"{folder}{slug}.html"].decode()
    found = [ident for ident, *_ in DRAWN.findall(html)]
    assert len(found) == len(set(found))
    for figure in page.figures:
        _, _, rest = html.partition(f'<h2 id="{heading_id(figure.under)}">')
        part = rest.partition("<h2")[0]
        assert figure.caption in unescape(part)
        assert part.count("<svg") == 1


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
    assert inline(Picture(alt="x", drawing=BROKEN)) is None
    assert len(caplog.records) == 1


def fails() -> Picture:
    raise ZeroDivisionError


def test_a_picture_that_cannot_be_worked_out_is_left_out(caplog: pytest.LogCaptureFixture) -> None:
    assert inline(Picture.later(fails)) is None
    assert len(caplog.records) == 1


# --- the try-it page -------------------------------------------------------------------------


async def test_an_answer_on_the_try_it_page_has_its_picture(client: Client) -> None:
    page = await client.get("/try.html", params={"q": DISTANCE, "units": "cm"})
    [(_, _, words)] = DRAWN.findall(await page.text())
    assert unescape(words).startswith("Seen from the side: Distance from tube to back")
    assert "font-src 'self'" in page.headers["Content-Security-Policy"]


async def test_a_question_without_a_picture_shows_none(client: Client) -> None:
    page = await client.get("/try.html", params={"q": "convert 14in"})
    assert not DRAWN.findall(await page.text())


async def test_the_letters_are_served_and_nothing_that_is_not_there(client: Client) -> None:
    served = await client.get("/NoonFigtree-Bold.ttf")
    assert served.content_type == "font/ttf"
    for name in ("drawn-0.png", "picture.png"):
        assert (await client.get(f"/{name}")).status == 404


async def test_what_a_person_typed_is_only_words_in_a_picture(client: Client) -> None:
    asked = "temps basking:103F cool:79F animal:<script>alert(1)</script>"
    page = await client.get("/try.html", params={"q": asked})
    assert "<script>alert" not in await page.text()
