"""What the pages of the site tell: all that the guide, the animals and the questions say."""

import re

import pytest

from bot import guide
from bot.ask import ask
from bot.brief import brief_of
from bot.commands import ALL_COMMANDS
from bot.facts import Say
from bot.fronts.pages.animals import sheets
from bot.fronts.pages.edition import Edition
from bot.preferences import Preferences
from bot.render.html import heading_id
from bot.reply import Line, Role
from calc.animals import animals
from calc.sources import bibliography
from tests.bot.site_read import EDITIONS, FOLDERS, PAGES, ids, shown_of, text, tree


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


@pytest.mark.slow
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
    # What is typed has one unit: temps basking:98F.
    body = re.sub(r"\b[a-z_]+:-?\d+(?:[.,]\d)? ?°?[FC]\b", "", body)
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
    # Of those alone that need saved data: the keeper's and the moderators'.
    needing, *heads = (
        edition.say(Say(f"page-{key}")) for key in ("kept-note", "part-kept", "part-moderator")
    )
    first, *kept = re.split("|".join(map(re.escape, heads)), told)[-3:]
    assert needing not in first
    assert all(needing in part for part in kept)


@pytest.mark.parametrize("folder", FOLDERS)
def test_an_animal_whose_uv_is_known_has_the_distances_of_its_tubes(folder: str) -> None:
    for slug, animal in animals().items():
        found = tree(f"{folder}animal-{slug}.html").findall(".//section[@class='answered']//table")
        assert len(found) == (animal.uvi is not None)
