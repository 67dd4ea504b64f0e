"""The animals by what they look like, each kind with its drawing."""

from dataclasses import dataclass
from functools import cache

from markupsafe import Markup

from bot import guide
from bot.drawing import Figure
from bot.facts import Say
from bot.fronts.pages.animals import Sheet, sheets
from bot.fronts.pages.edition import Edition
from bot.fronts.pages.pictures import silhouette
from bot.questions.setup.drawn_animal import drawn_animal

__all__ = ["Kind", "kinds"]

_FEW = 4


@dataclass(frozen=True, slots=True)
class Kind:
    """Animals that look alike: what they are called, one of them drawn, and all their sheets.

    ``first`` are those that a page of the guide is about; all of a few.
    """

    figure: Figure
    name: str
    drawn: Markup
    sheets: tuple[Sheet, ...]
    first: tuple[Sheet, ...]

    @property
    def others(self) -> tuple[Sheet, ...]:
        """Return those that are not first."""
        return tuple(sheet for sheet in self.sheets if sheet not in self.first)


@cache
def kinds(edition: Edition) -> tuple[Kind, ...]:
    """Return every kind of which there is an animal."""
    of_kind: dict[Figure, list[Sheet]] = {figure: [] for figure in Figure}
    for sheet in sheets(edition.language):
        of_kind[drawn_animal(sheet.animal.slug)[0]].append(sheet)
    names = {figure: edition.say(Say.by("page-figure", figure)) for figure in Figure}
    with_page = {page.animal for page in guide.pages(edition.language)}
    return tuple(
        Kind(
            figure,
            names[figure],
            silhouette(figure, names[figure]),
            tuple(listed),
            tuple(s for s in listed if len(listed) <= _FEW or s.animal.slug in with_page),
        )
        for figure, listed in of_kind.items()
        if listed
    )
