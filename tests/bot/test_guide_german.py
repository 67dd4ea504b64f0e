"""The German guide: every page has its twin, with the same parts, figures, sources and links."""

import re

import pytest

from bot import guide
from calc.tables import ROOT

GERMAN = "de"
SLUGS = [page.slug for page in guide.pages()]
_NAMES = re.compile(r"^\w+|\w+(?=:)")
_OF_INCHES = re.compile(r"\d ?(?:in|ft|F)\b")
_NUMBER = re.compile(r"\d+(?:[.,]\d+)?")


def _asked(page: guide.Page) -> list[str]:
    return [page.example, *(figure.ask or "" for figure in page.figures)]


def _numbers(text: str) -> list[str]:
    return sorted(number.replace(",", ".") for number in _NUMBER.findall(text))


def test_every_page_stands_in_german_in_the_same_order() -> None:
    assert [page.slug for page in guide.pages(GERMAN)] == SLUGS
    written = {path.stem for path in (ROOT / "bot/guide" / GERMAN).glob("*.md")}
    assert written == set(SLUGS)


@pytest.mark.parametrize("slug", SLUGS)
def test_a_page_points_and_draws_as_its_twin(slug: str) -> None:
    first, twin = guide.page(slug), guide.page(slug, GERMAN)
    assert (twin.related, twin.sources) == (first.related, first.sources)
    assert [f.sketch for f in twin.figures] == [f.sketch for f in first.figures]
    for german, english in zip(_asked(twin), _asked(first), strict=True):
        # The same question with the same options, told in centimetres and degrees C.
        assert _NAMES.findall(german) == _NAMES.findall(english)
        assert not _OF_INCHES.search(german), german
    assert len(guide.sections(twin, GERMAN)) == len(guide.sections(first))


@pytest.mark.parametrize("slug", SLUGS)
def test_hardly_a_figure_of_a_page_differs_from_its_twin(slug: str) -> None:
    first, twin = _numbers(guide.page(slug).body), _numbers(guide.page(slug, GERMAN).body)
    odd = set(first) ^ set(twin)
    # Times of day, emergency numbers and sums that are told in degrees C first.
    assert len(odd) <= 7, odd


def test_the_glossary_has_as_many_terms_on_the_same_pages() -> None:
    first, german = guide.glossary(), guide.glossary(GERMAN)
    assert len(german) == len(first)
    assert {term.page for term in german} == {term.page for term in first}


def test_no_page_is_longer_or_harder_than_it_may_be() -> None:
    for page in guide.pages(GERMAN):
        for sentence in re.split(r"(?<=[.!?:])\s+", page.body):
            assert len(sentence.split()) <= 40, sentence
