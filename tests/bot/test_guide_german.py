"""The German guide: every page has its twin, with the same parts, figures, sources and links."""

import re

import pytest

from bot import guide

GERMAN = "de"
SLUGS = [page.slug for page in guide.pages()]
_NUMBER = re.compile(r"\d+(?:[.,]\d+)?")


def _numbers(text: str) -> list[str]:
    return sorted(number.replace(",", ".") for number in _NUMBER.findall(text))


def test_every_page_stands_in_german_in_the_same_order() -> None:
    assert [page.slug for page in guide.pages(GERMAN)] == SLUGS


@pytest.mark.parametrize("slug", SLUGS)
def test_a_page_points_and_draws_as_its_twin(slug: str) -> None:
    first, twin = guide.page(slug), guide.page(slug, GERMAN)
    assert (twin.example, twin.related, twin.sources) == (
        first.example,
        first.related,
        first.sources,
    )
    assert [(f.ask, f.sketch) for f in twin.figures] == [(f.ask, f.sketch) for f in first.figures]
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
