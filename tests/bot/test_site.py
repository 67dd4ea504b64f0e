"""The guide as a site: whole, linked, valid, with no request to anywhere else."""

import itertools
import json
import re
from functools import cache
from html import unescape
from pathlib import Path
from urllib.parse import quote
from xml.etree.ElementTree import Element

import html5lib
import pytest

from bot import guide
from bot.ask import ask
from bot.commands import ALL_COMMANDS, COMMANDS
from bot.fronts.pages.site import KINDS, build, render_site
from bot.preferences import Preferences
from bot.render.html import heading_id
from calc.animals import animals
from calc.sources import Kind, bibliography

SITE = render_site(try_it=False)
PAGES = sorted(name for name in SITE if name.endswith(".html"))


@cache
def tree(name: str) -> Element:
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    parsed: Element = parser.parse(SITE[name].decode())
    return parsed


def ids(name: str) -> list[str]:
    return [e.attrib["id"] for e in tree(name).iter() if "id" in e.attrib]


def text(name: str) -> str:
    return " ".join("".join(tree(name).itertext()).split())


def test_the_site_has_a_page_for_each_guide_page_and_each_animal() -> None:
    wanted = {"index.html", "animals.html", "glossary.html", "sources.html", "search.html"}
    wanted.add("questions.html")
    wanted |= {f"{page.slug}.html" for page in guide.pages()}
    wanted |= {f"animal-{slug}.html" for slug in animals()}
    assert set(PAGES) == wanted


def test_building_writes_every_file_and_can_be_repeated(tmp_path: Path) -> None:
    assert build(tmp_path / "site") == build(tmp_path / "site") == len(SITE)
    written = {path.name: path.read_bytes() for path in (tmp_path / "site").iterdir()}
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
    assert tree(name).attrib["lang"] == "en"
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
        assert (page or name) in SITE, address
        if place:
            assert place in ids(page or name), address


@pytest.mark.parametrize("name", PAGES)
def test_a_page_asks_for_nothing_from_elsewhere_and_runs_nothing_of_its_own(name: str) -> None:
    for element in tree(name).iter():
        for key, value in element.attrib.items():
            assert not key.startswith("on"), key
            assert key != "style"
            if key in ("href", "src", "action"):
                assert "//" not in value
                assert ":" not in value
        if element.tag == "script":
            assert "src" in element.attrib
        if element.tag == "img":
            assert "alt" in element.attrib
        assert element.tag not in ("style", "iframe", "object", "embed")


def test_the_style_sheet_and_the_script_fetch_nothing() -> None:
    for name in ("style.css", "search.js"):
        told = SITE[name].decode()
        assert not re.search(r"url\(|@import|fetch\(|XMLHttpRequest|https?:", told)


@pytest.mark.parametrize("page", guide.pages(), ids=lambda page: page.slug)
def test_a_guide_page_shows_its_example_and_its_neighbours(page: guide.Page) -> None:
    name = f"{page.slug}.html"
    assert page.example in text(name)
    turns = [e for e in tree(name).iter("a") if e.attrib.get("rel") in ("prev", "next")]
    around = [page.slug for page in guide.pages()]
    at = around.index(page.slug)
    assert [e.attrib["href"] for e in turns] == [
        f"{slug}.html" for slug in (*around[:at][-1:], *around[at + 1 :][:1])
    ]
    current = [e for e in tree(name).iter("a") if "aria-current" in e.attrib]
    assert [e.attrib["href"] for e in current] == [name]
    assert all(bibliography()[key].citation in text(name) for key in page.sources)


@pytest.mark.parametrize("slug", animals())
def test_an_animal_shows_each_figure_with_its_source_or_says_it_is_not_known(slug: str) -> None:
    animal = animals()[slug]
    told = text(f"animal-{slug}.html")
    assert animal.scientific in told
    rows = tree(f"animal-{slug}.html").find(".//article/dl")
    assert rows
    for row in rows.findall("div"):
        known = row.find("dd/a[@class='kind']") is not None
        assert known != ("not known here" in "".join(row.itertext()))
    for target in (animal.uvi, animal.basking_surface_c, animal.cool_air_c):
        if target is not None:
            assert " ".join(_citation(target.source).split()) in told
    for view in animal.disagreements:
        assert view.text in told


def _citation(key: str) -> str:
    return bibliography()[key].citation


@pytest.mark.parametrize("name", PAGES)
def test_a_temperature_is_never_given_in_one_unit_only(name: str) -> None:
    body = re.sub(r"“[^”]*”|\"[^\"]*\"", "", text(name))
    if name == "sources.html":
        return
    bare = re.findall(r"\d °F(?! ?\(|, best|\w)", body)
    given = set(re.findall(r"(\d+ °F) \(", body))
    assert all(any(g.endswith(b) for g in given) for b in bare), bare


def test_the_sources_page_shows_every_source_once_by_its_kind() -> None:
    assert set(KINDS) == set(Kind)
    for key, entry in bibliography().items():
        assert ids("sources.html").count(key) == 1
        assert entry.citation in text("sources.html")


def test_the_glossary_shows_every_term() -> None:
    for term in guide.glossary():
        assert f"{term.name} {term.meaning}" in text("glossary.html")


def test_the_overview_shows_every_question_with_its_options_and_examples() -> None:
    told = text("questions.html")
    for command in ALL_COMMANDS:
        assert heading_id(command.name) in ids("questions.html")
        assert f"{command.name} {command.summary}." in told
        assert all(" ".join(example.split()) in told for example in command.examples)
        assert all(option.description in told for option in command.query.options())
    # Of those alone that need saved data: the keeper's and the moderators'.
    needing = "work on Discord and at the console"
    first, *kept = re.split("What is kept for you|For moderators", told)[-3:]
    assert needing not in first
    assert all(needing in part for part in kept)


def test_an_animal_whose_uv_is_known_has_the_distances_of_its_tubes() -> None:
    for slug, animal in animals().items():
        name = f"animal-{slug}.html"
        shown = [e.text or "" for e in tree(name).findall(".//article/h2")]
        assert any(h.startswith("Tube distances for") for h in shown) == (animal.uvi is not None)


def test_the_address_that_a_reply_gives_is_that_of_a_page_of_the_site() -> None:
    preferences = Preferences(guide_url="https://guide.invalid/pages/")
    for command in COMMANDS:
        for line in command.examples:
            for link in ask(line, preferences).guide:
                folder, _, name = link.url.rpartition("/")
                assert folder == "https://guide.invalid/pages"
                assert name in SITE


def test_the_search_index_leads_to_places_that_exist() -> None:
    script = SITE["search-index.js"].decode()
    entries = json.loads(script.removeprefix("window.noonstoneIndex = ").rstrip(";\n"))
    assert {"screens.html", "animal-boa.html"} <= {entry["url"] for entry in entries}
    for entry in entries:
        page, _, place = entry["url"].partition("#")
        assert page in SITE
        assert not place or place in ids(page)
        assert entry["title"]
        assert entry["text"]


def test_only_the_served_site_links_to_the_try_it_page() -> None:
    served = render_site(try_it=True)
    assert set(served) == set(SITE)
    assert not any(b"try.html" in content for content in SITE.values())
    told = served["questions.html"].decode()
    for command in ALL_COMMANDS:
        linked = f'href="try.html?q={quote(command.examples[0])}"' in told
        assert linked == (command.stored is None), command.name
    page = guide.page("measuring-the-distance")
    link = re.search(r'href="(try\.html\?q=[^"]*)"', served[f"{page.slug}.html"].decode())
    assert link
    assert "%25" in unescape(link[1])
