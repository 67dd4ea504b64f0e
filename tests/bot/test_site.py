"""The guide as a site: whole, linked, valid, with no request to anywhere else."""

import itertools
import json
import re
from collections.abc import Iterator
from functools import cache
from html import unescape
from pathlib import Path
from posixpath import normpath
from urllib.parse import quote
from xml.etree.ElementTree import Element

import html5lib
import pytest

from bot import guide
from bot.ask import ask
from bot.brief import brief_of
from bot.commands import ALL_COMMANDS, COMMANDS
from bot.facts import Say
from bot.fronts.pages.animals import sheets
from bot.fronts.pages.edition import Edition, editions
from bot.fronts.pages.site import build, render_site
from bot.preferences import Preferences
from bot.render.html import heading_id
from bot.reply import Line, Role
from calc.animals import animals
from calc.sources import bibliography
from tests.bot.saying.test_prose import sentences

SITE = render_site(try_it=False)
PAGES = sorted(name for name in SITE if name.endswith(".html"))
EDITIONS = editions()
FOLDERS = [edition.folder for edition in EDITIONS]
TAGS = re.compile(r"<[^>]*>|&\w+;")
ATTRIBUTE = re.compile(r'(?:alt|aria-label|placeholder|title|content)="([^"{]+)"')

# Questions, a policy and a script for browsers, and what a log or a console reads.
NOT_ON_A_PAGE = (
    *("card animal:", "window.", "default-src", "fault %s", "a picture ", "a request "),
    *("the animal of the sketch", "The guide is at ", "/ (stop with Ctrl+C)."),
)
ROOT = Path(__file__).parent.parent.parent
CITATIONS = [" ".join(entry.citation.split()) for entry in bibliography().values()]


@cache
def tree(name: str) -> Element:
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    parsed: Element = parser.parse(SITE[name].decode())
    return parsed


def ids(name: str) -> list[str]:
    return [e.attrib["id"] for e in tree(name).iter() if "id" in e.attrib]


def text(name: str) -> str:
    return " ".join("".join(tree(name).itertext()).split())


def edition_of(name: str) -> Edition:
    return next(e for e in reversed(EDITIONS) if name.startswith(e.folder))


def test_the_site_has_a_page_for_each_guide_page_and_each_animal_in_every_language() -> None:
    wanted = {"index.html", "animals.html", "glossary.html", "sources.html", "search.html"}
    wanted.add("questions.html")
    wanted |= {f"{page.slug}.html" for page in guide.pages()}
    wanted |= {f"animal-{slug}.html" for slug in animals()}
    assert FOLDERS == ["", "de/"]
    assert set(PAGES) == {f"{folder}{name}" for folder in FOLDERS for name in wanted}


def test_templates_hold_no_word_and_code_no_sentence() -> None:
    for room in ("bot/fronts/pages/templates", "bot/render/templates"):
        for path in (ROOT / room).glob("*.html"):
            bare = re.sub(r"{%.*?%}|{{.*?}}|{#.*?#}", "", path.read_text("utf-8"), flags=re.S)
            words = [w for w in re.findall(r"[A-Za-z]+", TAGS.sub(" ", bare)) if w != "Noonstone"]
            assert words == [], path.name
            told = ATTRIBUTE.findall(bare)
            assert set(told) <= {"width=device-width, initial-scale=1", "light dark"}, path.name
    for path in (ROOT / "bot/fronts/pages").glob("*.py"):
        assert [text for text in sentences(path) if not text.startswith(NOT_ON_A_PAGE)] == []


def test_building_writes_every_file_and_can_be_repeated(tmp_path: Path) -> None:
    assert build(tmp_path / "site") == build(tmp_path / "site") == len(SITE)
    folder = tmp_path / "site"
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


def test_no_two_pages_share_a_title() -> None:
    titles = [tree(name).findtext("head/title") for name in PAGES]
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


def folder_of(name: str) -> str:
    return edition_of(name).folder


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


def shown_of(element: Element) -> Iterator[str]:
    """Give every text but what is typed, what is cited, and what says that it is English."""
    english = element.attrib.get("lang") == "en" or element.attrib.get("class") == "sources"
    if not english and element.tag not in ("pre", "code", "script"):
        yield element.text or ""
        for inside in element:
            yield from shown_of(inside)
    yield element.tail or ""


@pytest.mark.parametrize("name", [name for name in PAGES if name.startswith("de/")])
def test_a_german_page_holds_no_word_that_only_english_has(name: str) -> None:
    """Sources are cited as they were read; what is typed is the same in every language."""
    told = " ".join(shown_of(tree(name)))
    for citation in CITATIONS:
        told = " ".join(told.split()).replace(citation, " ")
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
        told = SITE[name].decode()
        assert not re.search(r"url\(|@import|fetch\(|XMLHttpRequest|https?:", told)


@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
@pytest.mark.parametrize("slug", [page.slug for page in guide.pages()])
def test_a_guide_page_shows_its_example_and_its_neighbours(slug: str, edition: Edition) -> None:
    page = guide.page(slug, edition.language)
    name = f"{edition.folder}{slug}.html"
    assert page.example in text(name)
    assert tree(name).findtext(".//h1") == page.title
    turns = [e for e in tree(name).iter("a") if e.attrib.get("rel") in ("prev", "next")]
    around = [page.slug for page in guide.pages()]
    at = around.index(page.slug)
    assert [e.attrib["href"] for e in turns] == [
        f"{slug}.html" for slug in (*around[:at][-1:], *around[at + 1 :][:1])
    ]
    current = [e for e in tree(name).iter("a") if "aria-current" in e.attrib]
    assert [e.attrib["href"] for e in current] == [f"{slug}.html"]
    assert all(bibliography()[key].citation in text(name) for key in page.sources)


@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
@pytest.mark.parametrize("slug", animals())
def test_an_animal_shows_all_that_is_known_of_its_needs_with_who_says_so(
    slug: str, edition: Edition
) -> None:
    animal, name = animals()[slug], f"{edition.folder}animal-{slug}.html"
    told = text(name)
    assert animal.scientific in told
    reply = ask(f"needs {animal.name}", Preferences(language=edition.language))
    assert reply.language == edition.language
    for row in reply.rows:
        assert all(" ".join(part.split()) in told for part in (row.label, row.text))
    for line in (*brief_of(reply), *(Line(role=Role.HEAD, text=t) for t in reply.why)):
        assert " ".join(line.text.split()) in told
    assert all(" ".join(caution.split()) in told for caution in reply.cautions)
    assert all(" ".join(source.citation.split()) in told for source in reply.sources)
    links = {e.attrib["href"] for e in tree(name).iter("a") if e.attrib.get("class") == "kind"}
    assert {f"sources.html#{source.key}" for source in reply.sources} == links


@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
def test_what_an_animals_page_offers_to_ask_is_answered(edition: Edition) -> None:
    for sheet in sheets(edition.language):
        for question in sheet.asks:
            reply = ask(question, Preferences(language=edition.language))
            assert reply.status == "ok", f"{question}: {reply.answer}"


@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
def test_the_table_of_animals_shows_what_their_pages_show(edition: Edition) -> None:
    rows = tree(f"{edition.folder}animals.html").findall(".//tbody/tr")
    assert len(rows) == len(animals())
    names = [" ".join("".join(row.find("th").itertext()).split()) for row in rows]  # type: ignore[union-attr]
    assert names == sorted(names, key=guide.alphabetical)
    for row in rows:
        link = row.find("th/a")
        assert link is not None
        told = text(edition.folder + link.attrib["href"])
        for cell in row.findall("td"):
            shown = " ".join("".join(cell.itertext()).split())
            known = re.search(r"\d", shown)
            assert not known or shown in told, shown


@pytest.mark.parametrize("name", PAGES)
def test_a_temperature_is_never_given_in_one_unit_only(name: str) -> None:
    body = re.sub(
        r"“[^”]*”|„[^“]*“|\"[^\"]*\"", "", " ".join(" ".join(shown_of(tree(name))).split())
    )
    if name.endswith("sources.html"):
        return
    # Outside brackets, and not followed by one with the other unit.
    alone = re.sub(r"\([^()]*\)", "()", body)
    bare = re.findall(r"\d+(?:[.,]\d)? °[FC](?! ?\(|, best|, am besten|\w)", alone)
    given = set(re.findall(r"(\d+(?:[.,]\d)? °[FC]) \(", body))
    assert set(bare) <= given, bare


def test_the_sources_page_shows_every_source_once_by_its_kind() -> None:
    for name in ("sources.html", "de/sources.html"):
        for key, entry in bibliography().items():
            assert ids(name).count(key) == 1
            assert entry.citation in text(name)
        headings = tree(name).findall(".//section[@class='sources']/h2")
        assert len(headings) == len({entry.kind for entry in bibliography().values()})


@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
def test_the_glossary_shows_every_term(edition: Edition) -> None:
    terms = guide.glossary(edition.language)
    for term in terms:
        assert f"{term.name} {term.meaning}" in text(f"{edition.folder}glossary.html")
    assert [term.name for term in terms] == sorted(
        (term.name for term in terms), key=guide.alphabetical
    )


@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
def test_the_overview_shows_every_question_with_its_options_and_examples(edition: Edition) -> None:
    name = f"{edition.folder}questions.html"
    told = text(name)
    for command in ALL_COMMANDS:
        assert heading_id(command.name) in ids(name)
        slug = command.name.replace(" ", "-")
        assert f"{command.name} {edition.say(Say(f'summary-{slug}'))}." in told
        assert all(" ".join(example.split()) in told for example in command.examples)
        for option in command.query.options():
            assert edition.say(Say(f"option-{slug}-{option.name}")) in told


@pytest.mark.parametrize("folder", FOLDERS)
def test_an_animal_whose_uv_is_known_has_the_distances_of_its_tubes(folder: str) -> None:
    for slug, animal in animals().items():
        found = tree(f"{folder}animal-{slug}.html").findall(".//section[@class='answered']//table")
        assert len(found) == (animal.uvi is not None)


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
    served = render_site(try_it=True)
    assert set(served) == set(SITE)
    assert not any(b"try.html" in content for content in SITE.values())
    for folder in FOLDERS:
        told = served[f"{folder}questions.html"].decode()
        for command in ALL_COMMANDS:
            linked = f'href="try.html?q={quote(command.examples[0])}"' in told
            assert linked == (command.stored is None), command.name
    page = guide.page("measuring-the-distance")
    link = re.search(r'href="(try\.html\?q=[^"]*)"', served[f"{page.slug}.html"].decode())
    assert link
    assert "%25" in unescape(link[1])
