"""Pictures in a real browser: its own boxes of their words, their inks, and care sheets printed."""

import re
from urllib.parse import quote

import pytest
from playwright.async_api import Page, expect

import tests.bot.test_pages_browser as browsing
from bot.render.picture.lettering import width
from tests.bot.test_pages_browser import DISTANCE, serious

pytestmark = browsing.pytestmark
address, page = browsing.address, browsing.page


async def test_an_answer_comes_with_its_picture_and_letters(page: Page, address: str) -> None:
    await page.goto(f"{address}/try.html?q={quote(DISTANCE)}")
    picture = page.get_by_role("img", name="Seen from the side: Distance from tube to back")
    box = await picture.bounding_box()
    assert box
    assert box["width"] > 300
    assert await page.evaluate("document.fonts.ready.then(f => f.check('22px \"Noon Figtree\"'))")


async def test_the_words_of_a_picture_are_as_wide_as_was_counted(page: Page, address: str) -> None:
    await page.goto(f"{address}/try.html?q={quote(DISTANCE)}")
    await page.evaluate("document.fonts.ready")
    told = await page.evaluate(
        "Array.from(document.querySelectorAll('.noon-picture text')).map(t => ["
        "t.textContent, t.getComputedTextLength(), parseFloat(t.getAttribute('font-size')),"
        "t.getAttribute('font-weight') === '700'])"
    )
    assert len(told) > 10
    for words, long, size, bold in told:
        assert long == pytest.approx(width(words, size, bold=bold), rel=0.03, abs=1.5)


async def test_a_picture_turns_dark_with_its_page(page: Page, address: str) -> None:
    await page.goto(f"{address}/try.html?q={quote(DISTANCE)}")
    grounds = []
    for scheme in ("light", "dark"):
        await page.emulate_media(color_scheme=scheme)
        ground = "getComputedStyle(document.querySelector('.noon-picture')).backgroundColor"
        grounds.append(await page.evaluate(ground))
    assert grounds == ["rgb(251, 247, 239)", "rgb(25, 26, 24)"]


@pytest.mark.parametrize("paper", ["A4", "Letter"])
@pytest.mark.parametrize(
    "name",
    [
        "sheet.html?q=check bearded dragon, 48x24x24in, 12% tube, 14in to its back, cool 80F",
        "de/sheet.html?q=plan animal:veiled chameleon enclosure:24x24x48in lid:full mesh",
    ],
)
async def test_a_care_sheet_is_printed_on_one_sheet_of_paper(
    page: Page, address: str, name: str, paper: str
) -> None:
    await page.goto(f"{address}/{name}")
    await expect(page.locator(".hand-over svg")).to_be_visible()
    assert await serious(page) == []
    printed = await page.pdf(format=paper)
    assert len(re.findall(rb"/Type\s*/Page\b", printed)) == 1
    await page.emulate_media(media="print")
    await expect(page.get_by_role("heading", level=1)).to_be_hidden()
    await expect(page.locator(".beside")).to_be_visible()


async def test_an_answer_leads_to_its_care_sheet(page: Page, address: str) -> None:
    asked = quote("check bearded dragon, 48x24x24in, 12% tube, 14in to its back, cool 80F")
    await page.goto(f"{address}/try.html?q={asked}&units=cm")
    await page.get_by_role("link", name="Care sheet to print").click()
    await expect(page.get_by_role("img", name="Care sheet: bearded dragon")).to_be_visible()


# What a browser measures of them is held against our own measure, and against each other.
MEASURED = [
    DISTANCE,
    "uvi distance:40in tube:6% reflector:polished screen:30% animal:green-and-black dart frog",
    "tube distance:16in screen:none animal:bearded dragon",
    "card animal:leopard gecko",
    "decline animal:bearded dragon readings:2026-01-10 5.0, 2026-04-10 4.4, 2026-09-10 3.4",
    "plan animal:veiled chameleon enclosure:24x24x48in lid:full mesh room:70F night:62F",
    "check bearded dragon, 48x24x24in, 12% tube, shiny hood, 16in to its back, basking 104F",
    "basking surface:115F air:79F distance:12in animal:bearded dragon",
    "air enclosure:48x24x24in material:wood lid:full mesh room:68F want:80F",
    "outdoors latitude:40N month:June animal:bearded dragon",
]
_BOXES = """Array.from(document.querySelectorAll('.noon-picture text')).map(t => {
  const b = t.getBoundingClientRect();
  const size = parseFloat(getComputedStyle(t).fontSize) * t.getScreenCTM().a;
  return [t.textContent, b.left, b.right, b.top, b.bottom, size];
})"""


@pytest.mark.slow
@pytest.mark.parametrize("folder", ["", "de/"])
async def test_no_words_of_a_picture_meet_in_a_browser_and_all_are_read_on_a_phone(
    page: Page, address: str, folder: str
) -> None:
    # So wide that a picture itself is 360 pixels wide or a little more.
    await page.set_viewport_size({"width": 420, "height": 800})
    for asked in MEASURED:
        await page.goto(f"{address}/{folder}try.html?q={quote(asked)}")
        await page.evaluate("document.fonts.ready")
        boxes = await page.evaluate(_BOXES)
        assert boxes, asked
        for number, (words, left, right, top, foot, size) in enumerate(boxes):
            assert size >= 10.5, (asked, words, size)
            # Letters are lower than their line: a third of it is air above and below them.
            air = (foot - top) / 6.0
            for other, first, last, high, low, _ in boxes[number + 1 :]:
                across = min(right, last) - max(left, first)
                down = min(foot - air, low - air) - max(top + air, high + air)
                assert across <= 0.5 or down <= 0.5, (asked, words, other)
