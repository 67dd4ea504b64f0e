"""The guide as a site: whole, linked, valid, with no request to anywhere else."""

import itertools
import json
import re
from html import unescape
from io import BytesIO
from pathlib import Path
from posixpath import normpath
from urllib.parse import quote

import pytest
from PIL import Image

from bot import guide
from bot.ask import ask
from bot.commands import ALL_COMMANDS, COMMANDS
from bot.fronts.pages.edition import Edition
from bot.fronts.pages.found import find
from bot.fronts.pages.site import Site, build
from bot.preferences import Preferences
from calc.animals import animals
from calc.sources import bibliography
from tests.bot.saying.test_prose import sentences
from tests.bot.site_read import (
    EDITIONS,
    FOLDERS,
    PAGES,
    SERVED,
    SITE,
    edition_of,
    folder_of,
    ids,
    shown_of,
    tree,
)

TAGS = re.compile(r"<[^>]*>|&\w+;")
ATTRIBUTE = re.compile(r'(?:alt|aria-label|placeholder|title|content)="([^"{]+)"')
# Questions, a policy and a script for browsers, and what a log or a console reads.
NOT_ON_A_PAGE = (
    *("card animal:", "window.", "default-src", "fault %s", "a picture ", "a request "),
    *("the animal of the sketch", "The guide is at ", "/ (stop with Ctrl+C)."),
)
# What browsers and chats read in the head of a page.
NO_WORDS = {
    *("width=device-width, initial-scale=1", "light dark", "website", "summary_large_image"),
    *("share.png", "1200", "630"),
}
ROOT = Path(__file__).parent.parent.parent
CITATIONS = [" ".join(entry.citation.split()) for entry in bibliography().values()]


def test_the_site_has_a_page_for_each_guide_page_and_each_animal_in_every_language() -> None:
    wanted = {"index.html", "animals.html", "glossary.html", "sources.html", "search.html"}
    wanted |= {"questions.html", "404.html", "offline.html"}
    wanted |= {f"{page.slug}.html" for page in guide.pages()}
    wanted |= {f"animal-{slug}.html" for slug in animals()}
    assert FOLDERS == ["", "de/"]
    assert set(PAGES) == {f"{folder}{name}" for folder in FOLDERS for name in wanted}


def test_no_page_weighs_more_than_300_kb_with_all_that_it_asks_for() -> None:
    fonts = sum(len(content) for name, content in SITE.items() if name.endswith(".ttf"))
    styles = len(SITE["style.css"]) + len(SITE["inks.css"]) + len(SITE["icon.svg"])
    for name in PAGES:
        content = SITE[name]
        index = f"{folder_of(name)}search-index.js"
        scripts = len(SITE[index]) + len(SITE["search.js"]) if b"search-index" in content else 0
        letters = fonts if b"<svg" in content else 0
        assert len(content) + styles + scripts + letters < 300_000, name


def test_a_site_with_an_address_has_a_map_of_its_pages_and_cards_for_chats() -> None:
    site = Site(address="https://guide.example/")
    told = site["sitemap.xml"].decode()
    listed = set(re.findall("<loc>https://guide.example/([^<]*)</loc>", told))
    assert listed == {
        name.removesuffix("index.html") for name in PAGES if not name.endswith("404.html")
    }
    for folder in FOLDERS:
        page = site[f"{folder}nights.html"].decode()
        assert (
            f'property="og:image" content="https://guide.example/{folder}share-nights.png"' in page
        )
        assert f'rel="canonical" href="https://guide.example/{folder}nights.html"' in page
    assert "sitemap.xml" not in SITE


@pytest.mark.parametrize("folder", FOLDERS)
@pytest.mark.parametrize(
    "name",
    ["share.png", "share-screens.png", "share-whom-to-believe.png", "share-animal-corn-snake.png"],
)
def test_the_card_of_a_page_is_small_and_is_named_by_it(folder: str, name: str) -> None:
    site = Site(address="https://guide.example/")
    content = site[f"{folder}{name}"]
    assert Image.open(BytesIO(content)).size == (1200, 630)
    assert len(content) <= 130_000
    page = name.removeprefix("share-").replace("share.png", "index.png").replace(".png", ".html")
    assert f"/{folder}{name}" in site[f"{folder}{page}"].decode()


@pytest.mark.parametrize(
    ("language", "typed", "page"),
    [
        ("en", "mbd", "why-uv-matters.html"),
        ("en", "gradient", "warm-end-and-cool-end.html"),
        ("en", "distnce", "measuring-the-distance.html"),
        ("en", "bearded dargon", "animal-bearded-dragon.html"),
        ("en", "heat wave", "too-hot-or-too-cold.html"),
        ("en", "metabolic", "why-uv-matters.html"),
        ("en", "gap", "measuring-the-distance.html"),
        ("en", "cold side", "the-cool-end.html"),
        ("en", "bulb wattage", "dimmers-and-wattage.html"),
        ("en", "beardie", "animal-bearded-dragon.html"),
        ("en", "led", "which-uv-lamp.html"),
        ("en", "burned", "when-something-burns.html"),
        ("en", "won't eat", "when-to-call-a-vet.html"),
        ("en", "how far should the lamp be", "measuring-the-distance.html"),
        ("en", "he gapes all day", "the-first-weeks.html"),
        ("en", "red light", "basking-lamps.html"),
        ("de", "abstand", "measuring-the-distance.html"),
        ("de", "grdaient", "warm-end-and-cool-end.html"),
        ("de", "rachitis", "why-uv-matters.html"),
        ("de", "kalte seite", "the-cool-end.html"),
        ("de", "meine bartagame frisst nicht mehr", "when-to-call-a-vet.html"),
        ("de", "apathisch", "when-to-call-a-vet.html"),
        ("de", "mbd", "why-uv-matters.html"),
        ("de", "gradient", "warm-end-and-cool-end.html"),
        ("de", "roehre abstnd", "measuring-the-distance.html"),
        ("de", "bartagmae", "animal-bearded-dragon.html"),
    ],
)
def test_what_people_type_is_found_by_synonyms_and_with_slips(
    language: str, typed: str, page: str
) -> None:
    edition = next(edition for edition in EDITIONS if edition.language == language)
    assert page in [one.url.partition("#")[0] for one in find(typed, edition)[:3]]


def test_what_stands_nowhere_is_not_found() -> None:
    assert find("qqqqqq", EDITIONS[0]) == ()
    assert find("  ", EDITIONS[0]) == ()


def test_templates_hold_no_word_and_code_no_sentence() -> None:
    for room in ("bot/fronts/pages/templates", "bot/render/templates"):
        for path in (ROOT / room).glob("*.html"):
            bare = re.sub(r"{%.*?%}|{{.*?}}|{#.*?#}", "", path.read_text("utf-8"), flags=re.S)
            words = [w for w in re.findall(r"[A-Za-z]+", TAGS.sub(" ", bare)) if w != "Noonstone"]
            assert words == [], path.name
            told = ATTRIBUTE.findall(bare)
            assert set(told) <= NO_WORDS, path.name
    for path in (ROOT / "bot/fronts/pages").glob("*.py"):
        assert [text for text in sentences(path) if not text.startswith(NOT_ON_A_PAGE)] == []


@pytest.mark.slow
def test_building_writes_every_file_and_can_be_repeated(tmp_path: Path) -> None:
    folder = tmp_path / "site"
    (folder / "de").mkdir(parents=True)
    for name in ("index.html", "de/index.html"):
        (folder / name).write_text("of an earlier build", "utf-8")
    assert build(folder) == len(SITE)
    paths = [path for path in folder.rglob("*") if path.is_file()]
    written = {path.relative_to(folder).as_posix(): path.read_bytes() for path in paths}
    assert written == SITE


@pytest.mark.parametrize("name", PAGES)
def test_a_page_is_valid_html_with_one_title_and_headings_in_order(name: str) -> None:
    found = list(tree(name).find("body/div/main").iter())  # type: ignore[union-attr]
    levels = [int(e.tag[1]) for e in found if re.fullmatch(r"h[1-6]", str(e.tag))]
    assert levels[0] == 1
    assert levels.count(1) == 1
    steps = itertools.pairwise(levels)
    assert all(after <= before + 1 for before, after in steps), levels
    assert len(set(ids(name))) == len(ids(name))
    assert tree(name).attrib["lang"] == edition_of(name).language
    title = tree(name).findtext("head/title") or ""
    assert title.endswith(" · Noonstone")


@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
def test_no_two_pages_share_a_title(edition: Edition) -> None:
    pages = [name for name in PAGES if edition_of(name) is edition]
    titles = [tree(name).findtext("head/title") for name in pages]
    assert len(set(titles)) == len(titles)


@pytest.mark.parametrize("name", PAGES)
def test_every_link_leads_to_a_page_and_a_place_that_exist(name: str) -> None:
    for element in tree(name).iter("a"):
        address = element.attrib["href"]
        page, _, place = address.partition("#")
        page = normpath(f"{folder_of(name)}{page}") if page else name
        assert page in SITE, address
        if place:
            assert place in ids(page), address


@pytest.mark.parametrize("name", PAGES)
def test_a_page_leads_to_itself_in_every_other_language_and_back(name: str) -> None:
    bare = name.removeprefix(folder_of(name))
    twins = {e.language: f"{e.folder}{bare}" for e in EDITIONS}
    links = tree(name).findall("head/link[@rel='alternate']")
    led = {e.attrib["hreflang"]: normpath(folder_of(name) + e.attrib["href"]) for e in links}
    assert led == twins
    shown = tree(name).findall("body/header//a[@hreflang]")
    seen = {e.attrib["hreflang"]: normpath(folder_of(name) + e.attrib["href"]) for e in shown}
    assert seen == {key: at for key, at in twins.items() if key != edition_of(name).language}
    assert [e.text for e in shown] == [e.own_name for e in EDITIONS if e != edition_of(name)]


@pytest.mark.parametrize("name", [name for name in PAGES if name.startswith("de/")])
def test_a_german_page_holds_no_word_that_only_english_has(name: str) -> None:
    """Sources are cited as they were read; what is typed is the same in every language."""
    told = " ".join(shown_of(tree(name)))
    for citation in CITATIONS:
        told = " ".join(told.split()).replace(citation, " ")
    # What is typed is English in every language.
    told = told.replace("not sure", " ")
    found = re.findall(r"\b(?:the|and|of|your|with|you|for|not|is|are)\b", told)
    assert found == [], told


@pytest.mark.parametrize("name", PAGES)
def test_a_page_asks_for_nothing_from_elsewhere_and_runs_nothing_of_its_own(name: str) -> None:
    for element in tree(name).iter():
        for key, value in element.attrib.items():
            assert not key.startswith("on"), key
            assert key != "style"
            if key in ("href", "src", "action"):
                assert "//" not in value
                assert ":" not in value
                assert value.count("../") == ("../" in value)
        if element.tag == "script":
            assert "src" in element.attrib
        if element.tag == "img":
            assert "alt" in element.attrib
        assert element.tag not in ("style", "iframe", "object", "embed")


def test_the_style_sheet_and_the_script_fetch_nothing() -> None:
    for name in ("style.css", "search.js"):
        # The letters of the pictures lie beside the pages.
        told = re.sub(r'url\("NoonFigtree-[A-Z][a-z]+\.ttf"\)', "", SITE[name].decode())
        assert not re.search(r"url\(|@import|fetch\(|XMLHttpRequest|https?:", told)


def test_the_address_that_a_reply_gives_is_that_of_a_page_of_the_site() -> None:
    for edition in EDITIONS:
        preferences = Preferences(
            guide_url="https://guide.invalid/pages/", language=edition.language
        )
        for command in COMMANDS:
            for line in command.examples:
                for link in ask(line, preferences).guide:
                    name = link.url.removeprefix("https://guide.invalid/pages/")
                    assert name in SITE
                    assert folder_of(name) == edition.folder


@pytest.mark.parametrize("folder", FOLDERS)
def test_the_search_index_leads_to_places_that_exist(folder: str) -> None:
    script = SITE[f"{folder}search-index.js"].decode()
    entries = json.loads(script.removeprefix("window.noonstoneIndex = ").rstrip(";\n"))
    assert {"screens.html", "animal-boa.html"} <= {entry["url"] for entry in entries}
    for entry in entries:
        page, _, place = entry["url"].partition("#")
        assert f"{folder}{page}" in SITE
        assert not place or place in ids(f"{folder}{page}")
        assert entry["title"]
        assert entry["text"]


def test_only_the_served_site_links_to_the_try_it_page() -> None:
    assert set(SERVED) == set(SITE)
    assert not any(b"try.html" in content for content in SITE.values())
    for folder in FOLDERS:
        told = SERVED[f"{folder}questions.html"].decode()
        for command in ALL_COMMANDS:
            linked = f'href="try.html?q={quote(command.examples[0])}"' in told
            assert linked == (command.stored is None), command.name
    page = guide.page("measuring-the-distance")
    link = re.search(r'href="(try\.html\?q=[^"]*)"', SERVED[f"{page.slug}.html"].decode())
    assert link
    assert "%25" in unescape(link[1])
