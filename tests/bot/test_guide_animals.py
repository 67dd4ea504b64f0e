"""The pages of single animals: their figures are those of ``needs``, in each language and unit."""

import pytest

from bot import guide
from bot.ask import ask
from bot.fronts.pages.filled import filled_page
from bot.guide.loader import MOST_WORDS, GuideError, read_page
from bot.language.units import Units
from bot.preferences import LANGUAGES, Language, Preferences
from bot.reply import Reply
from bot.saying.voice import voice
from calc.animals import animals

ABOUT = [page for page in guide.pages() if page.animal]
EACH = pytest.mark.parametrize("page", ABOUT, ids=lambda page: page.slug)
IN_EACH = pytest.mark.parametrize("language", LANGUAGES)
FRONT = (
    "---\ntitle: A\nsummary: B.\norder: 1\ntopic: animals\nexample: about\nrelated: []\n"
    "sources: [memory]\n"
)


def _asked(question: str, language: Language, units: Units) -> Reply:
    return ask(question, Preferences(forced_units=units, language=language))


def _told(reply: Reply) -> str:
    return " ".join((reply.answer, *(row.text for row in reply.rows)))


def test_twelve_animals_have_a_page_that_is_called_as_they_are() -> None:
    assert len(ABOUT) == 12
    assert all(page.animal == page.slug and page.slug in animals() for page in ABOUT)
    assert {page.topic for page in ABOUT} == {guide.Topic.ANIMALS}


@IN_EACH
@pytest.mark.parametrize("units", list(Units))
@EACH
def test_a_page_tells_what_needs_tells(page: guide.Page, units: Units, language: Language) -> None:
    name = animals()[page.slug].name
    needed = _asked(f"needs animal:{name}", language, units)
    body = _told(_asked(f"guide page:{page.slug}", language, units))
    rows = [row.text for row in needed.rows if row.text in body]
    # Water and light alone are told of what lives in water.
    assert len(rows) >= (5 if page.slug not in ("axolotl", "slider") else 3)
    assert "{" not in body


@IN_EACH
@EACH
def test_a_page_types_no_figure_of_its_animal(page: guide.Page, language: Language) -> None:
    twin = guide.page(page.slug, language)
    assert twin.animal == page.animal
    assert guide.HOLE.findall(twin.body) == guide.HOLE.findall(page.body)
    assert "°" not in twin.body


@IN_EACH
@EACH
def test_a_page_with_its_figures_is_short_and_names_a_vet_and_the_limit(
    page: guide.Page, language: Language
) -> None:
    told = filled_page(guide.page(page.slug, language), voice(language, Units.IN)).body
    assert len(told.split()) <= MOST_WORDS
    assert ("vet" if language == "en" else "Tierarzt") in told
    assert "too_hot" in guide.HOLE.findall(page.body)
    assert "{{" not in told


@EACH
def test_what_an_animal_needs_leads_to_its_page(page: guide.Page) -> None:
    name = animals()[page.slug].name
    assert ask(f"needs animal:{name}", Preferences()).guide[0].slug == page.slug


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("---\n\nText {{ uvi }}.", "nothing fills"),
        ("animal: slider\n---\n\nText.\n\n## So {{ uvi }}\n\nMore.", "nothing fills"),
        ("animal: slider\n---\n\nText {{uvi}}.", "a hole is {{ name }}"),
    ],
)
def test_a_hole_that_nothing_fills_is_refused(text: str, told: str) -> None:
    with pytest.raises(GuideError, match="guide page first") as caught:
        read_page("first", FRONT + text)
    assert told in str(caught.value)
