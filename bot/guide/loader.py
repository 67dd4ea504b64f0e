"""Reads the guide's pages and refuses a page that would mislead or break a link."""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from importlib.resources import files
from importlib.resources.abc import Traversable
from typing import Annotated, Self

from pydantic import (
    BaseModel,
    ConfigDict,
    StrictInt,
    StringConstraints,
    ValidationError,
    model_validator,
)

from calc.sources import bibliography

__all__ = [
    "FIGURES",
    "FIRST",
    "HOLE",
    "MOST_WORDS",
    "Answers",
    "Figure",
    "GuideError",
    "Page",
    "Sketch",
    "Topic",
    "arrange",
    "page",
    "pages",
    "read_page",
]

MOST_WORDS = 499
FIRST = "en"
"""The language whose pages stand in this folder; the others have a folder each, with its name."""


HOLE = re.compile(r"\{\{ (\w+) \}\}")
"""Where a figure comes in: one of ``FIGURES``, or of the page's animal by its name in its needs."""

FIGURES = frozenset(("lamps_apart",))
"""Figures that any page may have: our own, which answers tell from the same place."""


class GuideError(ValueError):
    """A guide page is not as it must be; the message names the page and what is wrong."""


class Topic(StrEnum):
    """The part of the guide that a page belongs to, in reading order."""

    START = "start"
    ANIMALS = "animals"
    UV = "uv"
    HEAT = "heat"
    DAY = "day"
    SAFETY = "safety"


class Sketch(StrEnum):
    """A figure that no question draws: whoever shows the page knows how to draw it."""

    LAYOUT = "layout"
    DISTANCE = "distance"
    PLACES = "places"
    THERMOMETERS = "thermometers"


_Text = Annotated[str, StringConstraints(strict=True, strip_whitespace=True, min_length=1)]


class Figure(BaseModel):
    """A picture of a page: the part that it closes, and what draws it.

    ``ask`` is a question whose answer has a picture; a ``sketch`` stands in its place.
    """

    model_config = ConfigDict(extra="forbid", frozen=True)

    under: _Text
    caption: _Text
    ask: _Text | None = None
    sketch: Sketch | None = None

    @model_validator(mode="after")
    def _has_one_maker(self) -> Self:
        if (self.ask is None) is (self.sketch is None):
            raise ValueError("a figure names either a question to ask or a sketch")
        return self


class Answers(BaseModel):
    """Questions that a part of a page answers with its first sentence.

    A question is asked where all patterns of one row of ``asked`` stand in it as whole words, and
    ``unless`` is not found.
    """

    model_config = ConfigDict(extra="forbid", frozen=True)

    part: _Text
    asked: tuple[tuple[_Text, ...], ...]
    unless: _Text | None = None

    @model_validator(mode="after")
    def _can_be_asked(self) -> Self:
        if not self.asked or not all(self.asked):
            raise ValueError("a part that answers names patterns of its questions")
        for pattern in (*(each for row in self.asked for each in row), self.unless or ""):
            try:
                re.compile(pattern)
            except re.error:
                raise ValueError(f"not a pattern: {pattern}") from None
        return self


class _FrontMatter(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True)

    title: _Text
    summary: _Text
    order: StrictInt
    topic: Topic
    example: _Text
    related: tuple[_Text, ...]
    sources: tuple[_Text, ...]
    figures: tuple[Figure, ...] = ()
    answers: tuple[Answers, ...] = ()
    animal: _Text | None = None
    worries: tuple[_Text, ...] = ()


@dataclass(frozen=True, slots=True)
class Page:
    """One page: its front matter and its Markdown body, whose headings start at ``##``.

    ``animal`` is the slug of the animal whose figures fill the holes of the body; ``worries`` are
    words by which people look for the page and that are not in its name.
    """

    slug: str
    title: str
    summary: str
    order: int
    topic: Topic
    body: str
    example: str
    related: tuple[str, ...]
    sources: tuple[str, ...]
    figures: tuple[Figure, ...] = ()
    answers: tuple[Answers, ...] = ()
    animal: str | None = None
    worries: tuple[str, ...] = ()


@cache
def pages(language: str = FIRST) -> tuple[Page, ...]:
    """Return the pages of a language in reading order."""
    return arrange(page(slug, language) for slug in _files(language))


@cache
def page(slug: str, language: str = FIRST) -> Page:
    """Return the page with this slug in a language; an unknown slug raises KeyError.

    Its own file alone is read: an answer that links to a page does not wait for all.
    """
    return read_page(slug, _files(language)[slug].read_text(encoding="utf-8"))


@cache
def _files(language: str) -> dict[str, Traversable]:
    """Return the pages' files; a page that a language lacks is that of the first one."""
    first = files("bot.guide")
    folders = (first,) if language == FIRST else (first, first / language)
    every = (path for folder in folders if folder.is_dir() for path in folder.iterdir())
    return {path.name.removesuffix(".md"): path for path in every if path.name.endswith(".md")}


def read_page(slug: str, text: str) -> Page:
    """Return the page of a file's text, or raise GuideError with the first thing wrong."""
    import frontmatter
    from yaml import YAMLError

    try:
        given, body = frontmatter.parse(text)
    except YAMLError as error:
        raise GuideError(f"guide page {slug}: its front matter is not YAML") from error
    try:
        fields = _FrontMatter.model_validate(given)
    except ValidationError as error:
        raise GuideError(f"guide page {slug}: {_first_problem(error)}") from error
    entry = Page(slug=slug, body=body, **dict(fields))
    _check_body(entry)
    _check_holes(entry)
    _check_figures(entry)
    _check_sources(entry)
    return entry


def arrange(entries: Iterable[Page]) -> tuple[Page, ...]:
    """Return the pages in reading order, once slugs, orders and links are found sound."""
    ordered = sorted(entries, key=lambda entry: entry.order)
    by_slug: dict[str, Page] = {}
    orders: dict[int, str] = {}
    for entry in ordered:
        if by_slug.setdefault(entry.slug, entry) is not entry:
            raise GuideError(f"guide page {entry.slug}: there are two pages of this name")
        other = orders.setdefault(entry.order, entry.slug)
        if other != entry.slug:
            raise GuideError(f"guide page {entry.slug}: order {entry.order} is taken by {other}")
    for entry in ordered:
        for slug in entry.related:
            if slug not in by_slug or slug == entry.slug:
                raise GuideError(f"guide page {entry.slug}: related page {slug!r} does not exist")
    worried: dict[str, str] = {}
    for entry in ordered:
        for worry in entry.worries:
            other = worried.setdefault(worry, entry.slug)
            if worry != worry.lower() or other != entry.slug:
                raise GuideError(f"guide page {entry.slug}: the worry {worry!r} is {other}'s")
    return tuple(ordered)


def _first_problem(error: ValidationError) -> str:
    first = error.errors()[0]
    key = ".".join(str(part) for part in first["loc"])
    return f"front matter key {key}: {first['msg'].lower()}"


def _check_body(entry: Page) -> None:
    words = len(entry.body.split())
    if not 0 < words <= MOST_WORDS:
        raise GuideError(f"guide page {entry.slug}: {words} words, not 1 to {MOST_WORDS}")
    for line in entry.body.splitlines():
        if line.startswith("#") and not line.startswith(("## ", "### ")):
            raise GuideError(f"guide page {entry.slug}: headings start at ##, not {line!r}")


def _check_holes(entry: Page) -> None:
    for line in entry.body.splitlines():
        holes = set(HOLE.findall(line))
        of_animal = holes - FIGURES
        if (of_animal and entry.animal is None) or (holes and line.startswith("#")):
            raise GuideError(f"guide page {entry.slug}: nothing fills {line!r}")
        if "{{" in HOLE.sub("", line):
            raise GuideError(f"guide page {entry.slug}: a hole is {{{{ name }}}}, not {line!r}")


def _check_figures(entry: Page) -> None:
    lines = entry.body.splitlines()
    headings = {line.removeprefix("## ") for line in lines if line.startswith("## ")}
    under = [figure.under for figure in entry.figures]
    for answers in entry.answers:
        if answers.part not in headings:
            raise GuideError(f"guide page {entry.slug}: no heading {answers.part!r} that answers")
    for heading in under:
        if heading not in headings:
            raise GuideError(f"guide page {entry.slug}: no heading {heading!r} for its figure")
        if under.count(heading) > 1:
            raise GuideError(f"guide page {entry.slug}: two figures under {heading!r}")


def _check_sources(entry: Page) -> None:
    if not entry.sources:
        raise GuideError(f"guide page {entry.slug}: front matter key sources: names no source")
    for key in entry.sources:
        if key not in bibliography():
            raise GuideError(f"guide page {entry.slug}: source {key!r} is not in the bibliography")
