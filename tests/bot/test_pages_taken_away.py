"""The site without a network: unpacked into a folder, and kept by a browser, read as people do."""

import io
import json
from collections.abc import AsyncIterator
from pathlib import Path
from zipfile import ZipFile

import pytest
import pytest_asyncio
from aiohttp import web
from PIL import Image
from playwright.async_api import Browser, BrowserContext, expect

from bot.fronts.pages.server import HOST
from bot.fronts.pages.takeaway import ARCHIVE, ICON, archive
from tests.bot.in_browser import needs_chromium
from tests.bot.site_read import EDITIONS, SITE

KINDS = {
    "html": "text/html",
    "css": "text/css",
    "js": "text/javascript",
    "svg": "image/svg+xml",
    "png": "image/png",
    "ttf": "font/ttf",
    "webmanifest": "application/manifest+json",
}
# As the palette of a packed picture has it.
PAPER = (250, 246, 238)
pytestmark = pytest.mark.asyncio(loop_scope="module")


@pytest.fixture(scope="module")
def unpacked(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("taken")
    with ZipFile(io.BytesIO(SITE[ARCHIVE])) as kept:
        kept.extractall(folder)
    return folder / "noonstone-guide"


@pytest_asyncio.fixture(loop_scope="module")
async def address() -> AsyncIterator[str]:
    """Serve the files as any plain web server does."""

    async def file(request: web.Request) -> web.Response:
        name = request.match_info["name"]
        name += "index.html" if not name or name.endswith("/") else ""
        if name not in SITE:
            raise web.HTTPNotFound
        return web.Response(body=SITE[name], content_type=KINDS[name.rpartition(".")[2]])

    app = web.Application()
    app.router.add_get("/{name:.*}", file)
    runner = web.AppRunner(app)
    await runner.setup()
    await web.TCPSite(runner, HOST, 0).start()
    yield f"http://{HOST}:{runner.addresses[0][1]}"
    await runner.cleanup()


async def test_the_archive_holds_the_whole_site_and_no_way_to_fetch_itself(unpacked: Path) -> None:
    paths = [path for path in unpacked.rglob("*") if path.is_file()]
    names = {path.relative_to(unpacked).as_posix() for path in paths}
    assert names == set(SITE) - {ARCHIVE}
    assert len(SITE[ARCHIVE]) < 5_000_000
    for edition in EDITIONS:
        page = (unpacked / edition.folder / "offline.html").read_text("utf-8")
        assert ARCHIVE not in page
        assert ARCHIVE in SITE[f"{edition.folder}offline.html"].decode()
        assert "keep.js" not in page
    assert archive({"a": b"1", "b": b"2"}) == archive({"a": b"1", "b": b"2"})


async def test_the_manifest_of_each_language_names_files_that_are_there() -> None:
    for edition in EDITIONS:
        told = json.loads(SITE[f"{edition.folder}app.webmanifest"])
        assert told["lang"] == edition.language
        for icon in told["icons"]:
            assert icon["src"].removeprefix("../") in SITE
    image = Image.open(io.BytesIO(SITE[ICON]))
    assert image.size == (1200, 1200)
    # Its corners are paper and its middle is not.
    assert image.convert("RGB").getpixel((2, 2)) == PAPER
    assert image.convert("RGB").getpixel((600, 450)) != PAPER


async def test_the_worker_names_every_file_but_the_archive_and_cards() -> None:
    head, data, *_ = SITE["worker.js"].decode().split("\n")
    kept = json.loads(data.removeprefix("self.noonstoneFiles = ").rstrip(";"))
    assert head == '"use strict";'
    assert set(kept["all"]) == set(SITE) - {ARCHIVE, "worker.js"}
    assert set(kept["first"]) <= set(kept["all"])
    assert {"index.html", "de/index.html", "offline.html", "style.css"} <= set(kept["first"])


@needs_chromium
async def test_the_unpacked_folder_is_read_and_searched_without_a_server(
    browser: Browser, unpacked: Path
) -> None:
    opened = await browser.new_context(offline=True)
    page = await opened.new_page()
    told: list[str] = []
    page.on("console", lambda message: told.append(message.text))
    page.on(
        "request", lambda request: told.append(request.url) if "file:" not in request.url else None
    )
    await page.goto((unpacked / "index.html").as_uri())
    field = page.get_by_role("banner").get_by_role("searchbox")
    await field.fill("distnce")
    await field.press("Enter")
    await page.locator(".found a").first.click()
    await expect(page.get_by_role("heading", level=1)).to_have_text("Measuring the distance")
    await page.get_by_role("link", name="Deutsch").click()
    await expect(page.get_by_role("heading", level=1)).to_have_text("Den Abstand messen")
    assert told == []
    await opened.close()


async def kept_by(browser: Browser, address: str) -> BrowserContext:
    opened = await browser.new_context()
    page = await opened.new_page()
    await page.goto(f"{address}/nights.html")
    await page.evaluate("navigator.serviceWorker.ready.then(() => true)")
    await page.reload()
    await page.goto(f"{address}/screens.html")
    return opened


@needs_chromium
async def test_pages_that_were_opened_are_read_without_a_network_and_others_say_so(
    browser: Browser, address: str
) -> None:
    opened = await kept_by(browser, address)
    page = opened.pages[0]
    await opened.set_offline(True)
    for name, heading in (
        ("nights.html", "Nights"),
        ("screens.html", "What a screen does"),
        ("", "Light and heat for your reptile, step by step"),
        ("reflectors.html", "Take the guide with you"),
        ("de/reflectors.html", "Die Anleitung mitnehmen"),
    ):
        await page.goto(f"{address}/{name}")
        await expect(page.get_by_role("heading", level=1)).to_have_text(heading)
    await page.goto(f"{address}/search.html?q=mbd")
    await expect(page.locator(".found a").first).to_be_visible()
    await opened.close()


@needs_chromium
async def test_all_pages_are_kept_at_a_press(browser: Browser, address: str) -> None:
    opened = await kept_by(browser, address)
    page = opened.pages[0]
    await page.goto(f"{address}/offline.html")
    await page.get_by_role("button", name="Keep all pages").click()
    await expect(page.get_by_role("status")).to_contain_text("All pages are kept", timeout=60_000)
    await opened.set_offline(True)
    await page.goto(f"{address}/de/animal-corn-snake.html")
    await expect(page.get_by_role("heading", level=1)).to_have_text("Kornnatter")
    await opened.close()
