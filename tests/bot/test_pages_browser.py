"""The site and the try-it page in a real browser, read by axe-core at phone and desktop width."""

import asyncio
from collections.abc import AsyncIterator
from pathlib import Path
from urllib.parse import quote

import pytest
import pytest_asyncio
from aiohttp import web
from axe_playwright_python.async_playwright import Axe
from playwright.async_api import Browser, BrowserContext, Page, expect

from bot.fronts.pages import server
from tests.bot.in_browser import needs_chromium
from tests.bot.site_read import PAGES, SERVED, SITE

pytestmark = [needs_chromium, pytest.mark.asyncio(loop_scope="module")]
PHONE, DESKTOP = (390, 844), (1280, 900)
# One page of each kind: what a colour scheme or a width can break, it breaks for the kind.
KINDS = [
    "index.html",
    "screens.html",
    "animals.html",
    "animal-bearded-dragon.html",
    "glossary.html",
    "sources.html",
    "search.html?q=uv",
    "questions.html",
    "try.html?q=tube distance:14in screen:none animal:bearded dragon",
    "try.html?q=pony",
    "steps.html",
    "steps.html?animal=bearded dragon&q=uvi&tube=12%&reflector=polished&screen=none",
    "steps.html?animal=bearded dragon&q=check&tube=12%&cool=75F&now=1",
    "de/steps.html?animal=gecko",
    *("de/index.html", "de/screens.html", "de/animals.html", "de/animal-bearded-dragon.html"),
    *("de/search.html?q=röhre", "de/questions.html", "de/try.html?q=pony", "de/none.html"),
    "none.html",
]
# An axe reads a page in half a second, and all pages are of these kinds: each run reads every
# second kind at a desk, the others on a phone, and some more.
SOME = sorted({name for name in KINDS[::2] if name in PAGES} | set(PAGES[::50]))
DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def address() -> AsyncIterator[str]:
    runner = web.AppRunner(server.application(per_minute=1000, files=SERVED))
    await runner.setup()
    await web.TCPSite(runner, server.HOST, 0).start()
    yield f"http://{server.HOST}:{runner.addresses[0][1]}"
    await runner.cleanup()


async def context(browser: Browser, size: tuple[int, int], **more: object) -> BrowserContext:
    width, height = size
    return await browser.new_context(viewport={"width": width, "height": height}, **more)  # type: ignore[arg-type]


@pytest_asyncio.fixture(loop_scope="module")
async def page(browser: Browser) -> AsyncIterator[Page]:
    opened = await context(browser, DESKTOP)
    yield await opened.new_page()
    await opened.close()


async def serious(page: Page) -> list[str]:
    await page.evaluate("document.querySelectorAll('details').forEach(part => part.open = true)")
    found = await Axe().run(page)
    return [
        f"{v['id']}: {node['html'][:120]}"
        for v in found.response["violations"]
        if v["impact"] in ("serious", "critical")
        for node in v["nodes"]
    ]


async def test_a_page_with_faults_has_serious_findings(page: Page) -> None:
    await page.set_content('<html><p style="color:#ccc">pale</p><img src="data:,"><a href="/"></a>')
    found = " ".join(await serious(page))
    for rule in ("color-contrast", "image-alt", "link-name", "html-has-lang"):
        assert f"{rule}:" in found


@pytest.mark.slow
@pytest.mark.parametrize(
    "pages", [SOME, pytest.param(PAGES, marks=pytest.mark.full)], ids=["some", "all"]
)
async def test_no_page_has_a_serious_finding(
    browser: Browser, address: str, pages: list[str]
) -> None:
    names = iter(pages)

    async def read(page: Page) -> list[tuple[str, list[str]]]:
        found = []
        for name in names:
            await page.goto(f"{address}/{name}")
            found.append((name, await serious(page)))
        return found

    opened = await context(browser, DESKTOP)
    # Two at a time: a browser gives each its own process.
    halves = await asyncio.gather(*[read(await opened.new_page()) for _ in range(2)])
    assert sorted(name for half in halves for name, _ in half) == pages
    assert [fault for half in halves for fault in half if fault[1]] == []
    await opened.close()


@pytest.mark.slow
@pytest.mark.parametrize(
    "kinds", [KINDS[1::2], pytest.param(KINDS, marks=pytest.mark.full)], ids=["some", "all"]
)
async def test_no_kind_of_page_has_a_serious_finding_on_a_phone_at_night(
    browser: Browser, address: str, kinds: list[str]
) -> None:
    opened = await context(browser, PHONE, color_scheme="dark")
    page = await opened.new_page()
    for name in kinds:
        await page.goto(f"{address}/{name}")
        assert await serious(page) == [], name
    await opened.close()


@pytest.mark.slow
@pytest.mark.parametrize(
    "pages", [PAGES[::15], pytest.param(PAGES, marks=pytest.mark.full)], ids=["some", "all"]
)
async def test_no_page_scrolls_sideways_or_complains(
    browser: Browser, address: str, pages: list[str]
) -> None:
    opened = await context(browser, (320, 640))
    page = await opened.new_page()
    told: list[str] = []
    page.on("console", lambda message: told.append(message.text))
    page.on("pageerror", lambda error: told.append(str(error)))
    for name in [*pages, *(kind for kind in KINDS if not kind.endswith("none.html"))]:
        await page.goto(f"{address}/{name}")
        assert await page.evaluate("document.documentElement.scrollWidth") <= 320, name
    assert told == []
    await opened.close()


async def test_a_page_is_read_without_javascript(browser: Browser, address: str) -> None:
    opened = await context(browser, PHONE, java_script_enabled=False)
    page = await opened.new_page()
    await page.goto(f"{address}/search.html?q=screens")
    await (
        page.get_by_role("main").get_by_role("link", name="What a screen does", exact=True).click()
    )
    await expect(page.get_by_role("heading", level=1)).to_have_text("What a screen does")
    await page.goto(f"{address}/try.html")
    await page.get_by_label("Your question").fill("convert 14in")
    await page.get_by_role("button", name="Ask").click()
    await expect(page.locator(".answer")).to_contain_text("35.5")
    await opened.close()


async def test_nothing_is_asked_of_any_other_machine(page: Page, address: str) -> None:
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    for name in ("index.html", "screens.html", "search.html?q=uv", "try.html?q=help"):
        await page.goto(f"{address}/{name}")
    assert len(asked) > 8
    assert [url for url in asked if not url.startswith(address)] == []


async def test_a_question_is_typed_and_answered(page: Page, address: str) -> None:
    await page.goto(f"{address}/measuring-the-distance.html")
    await page.get_by_role("link", name="Try it with your numbers").click()
    await expect(page.get_by_label("Your question")).to_have_value(DISTANCE)
    await expect(page.locator(".reply-ok .answer")).to_contain_text(" in (")
    await page.get_by_label("Show first").select_option("cm")
    await page.get_by_role("button", name="Ask").click()
    await expect(page.locator(".reply-ok .answer")).to_contain_text(" cm (")
    await page.get_by_label("Your question").fill("distance tube:pony")
    await page.get_by_role("button", name="Ask").click()
    await expect(page.locator(".reply-problem .answer")).to_contain_text("pony")


async def test_a_form_asks_one_thing_at_a_time_without_javascript(
    browser: Browser, address: str
) -> None:
    opened = await context(browser, PHONE, java_script_enabled=False)
    page = await opened.new_page()
    await page.goto(f"{address}/index.html")
    await page.get_by_role("link", name="Ask step by step").click()
    for way in ("Lizards", "Bearded dragon", "UV light", "The UV index to expect", "12 %"):
        await page.get_by_role("main").get_by_role("link", name=way).click()
    await page.get_by_role("link", name="I do not know").click()
    await page.get_by_role("main").get_by_role("link", name="nothing").click()
    await page.get_by_role("textbox", name="Distance").fill("a while")
    await page.get_by_role("button", name="Next").click()
    await expect(page.get_by_role("alert")).to_contain_text("I need a length with its unit")
    await page.get_by_role("textbox", name="Distance").fill("40cm")
    await page.get_by_role("button", name="Next").click()
    await expect(page.locator(".reply-ok")).to_contain_text("in (40 cm)")
    await expect(page.locator(".known")).to_contain_text("not sure")
    await page.get_by_role("link", name="Back").click()
    await expect(page.get_by_role("heading", level=1)).to_contain_text("How far is it")
    await page.get_by_role("link", name="Deutsch").click()
    await expect(page.get_by_role("heading", level=1)).to_contain_text("Wie weit ist es")
    await opened.close()


async def test_a_typed_script_is_shown_and_never_run(page: Page, address: str) -> None:
    dialogs: list[str] = []
    page.on("dialog", lambda dialog: dialogs.append(dialog.message))
    await page.goto(f"{address}/try.html")
    hostile = "</textarea><script>alert(1)</script><img src=x onerror=alert(2)>"
    await page.get_by_label("Your question").fill(hostile)
    await page.get_by_role("button", name="Ask").click()
    await expect(page.get_by_label("Your question")).to_have_value(hostile)
    assert await page.locator("main img, main script").count() == 0
    assert dialogs == []


async def test_the_search_in_the_header_finds_a_part_of_a_page_and_leads_there(
    page: Page, address: str
) -> None:
    await page.goto(f"{address}/nights.html")
    field = page.get_by_role("banner").get_by_role("searchbox")
    await field.fill("reflector foil")
    await field.press("Enter")
    found = page.locator(".found a")
    await expect(found.first).to_contain_text("Reflectors")
    await expect(page.get_by_role("status")).to_contain_text("Found: ")
    await found.first.click()
    await expect(page).to_have_url(f"{address}/reflectors.html#what-goes-wrong")
    await page.goto(f"{address}/search.html?q=zzzz")
    await expect(page.get_by_role("status")).to_contain_text("Nothing found")


async def test_the_german_search_forgives_umlauts(page: Page, address: str) -> None:
    told: dict[str, list[str]] = {}
    for typed in ("röhre", "roehre", "Rohre"):
        await page.goto(f"{address}/de/search.html?q={quote(typed)}")
        await expect(page.get_by_role("status")).to_contain_text("Gefunden: ")
        told[typed] = await page.locator(".found a").all_inner_texts()
    assert told["röhre"] == told["roehre"] == told["Rohre"]
    assert len(told["röhre"]) > 5
    await page.goto(f"{address}/de/search.html?q=zzzz")
    await expect(page.get_by_role("status")).to_contain_text("Nichts gefunden")


async def test_without_a_server_the_script_finds_what_people_type(
    page: Page, tmp_path: Path
) -> None:
    for name in [name for name in SITE if "search" in name or name.endswith(".css")]:
        (tmp_path / name).parent.mkdir(exist_ok=True)
        (tmp_path / name).write_bytes(SITE[name])
    for folder, typed, wanted in (
        ("", "mbd", "why-uv-matters"),
        ("", "distnce", "measuring-the-distance"),
        ("", "led", "which-uv-lamp"),
        ("", "burned", "when-something-burns"),
        ("", "how far should the lamp be", "measuring-the-distance"),
        ("", "won't eat", "when-to-call-a-vet"),
        ("de/", "roehre abstnd", "measuring-the-distance"),
        ("de/", "bartagmae", "animal-bearded-dragon"),
    ):
        await page.goto(f"{tmp_path.as_uri()}/{folder}search.html?q={quote(typed)}")
        found = page.locator("#found a")
        await expect(found.first).to_be_visible()
        links = await found.evaluate_all("all => all.slice(0, 3).map(a => a.getAttribute('href'))")
        assert any(link.startswith(wanted) for link in links), (typed, links)


async def test_a_reader_changes_the_language_and_stays_on_the_page(
    page: Page, address: str
) -> None:
    await page.goto(f"{address}/screens.html")
    await page.get_by_role("banner").get_by_role("link", name="Deutsch").click()
    await expect(page).to_have_url(f"{address}/de/screens.html")
    await expect(page.get_by_role("heading", level=1)).to_have_text("Was ein Gitter bewirkt")
    await page.get_by_role("link", name="Mit deinen Zahlen probieren").click()
    await expect(page.locator(".reply-ok .answer")).to_contain_text(" cm (")
    await page.get_by_role("banner").get_by_role("link", name="English").click()
    await expect(page.locator(".reply-ok .answer")).to_contain_text(" in (")


async def test_the_page_is_used_with_the_keyboard_alone(page: Page, address: str) -> None:
    await page.goto(f"{address}/try.html")
    await page.keyboard.press("Tab")
    await expect(page.get_by_role("link", name="Skip to the page")).to_be_focused()
    await page.keyboard.press("Enter")
    await page.keyboard.press("Tab")
    await expect(page.get_by_label("Your question")).to_be_focused()
    await page.keyboard.type("convert 14in")
    await page.keyboard.press("Tab")
    await page.keyboard.press("Tab")
    await page.keyboard.press("Enter")
    await expect(page.locator(".reply-ok")).to_be_visible()


async def test_print_leaves_out_the_ways_around(page: Page, address: str) -> None:
    await page.goto(f"{address}/screens.html")
    await page.emulate_media(media="print")
    for way in ("nav.pages", "nav.short", "nav.turn"):
        await expect(page.locator(way)).to_be_hidden()
    await expect(page.get_by_role("heading", level=1)).to_be_visible()
