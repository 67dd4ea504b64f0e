"""The page where a question is typed and answered, in the language of its folder."""

from dataclasses import dataclass
from urllib.parse import urlencode

from aiohttp import web
from markupsafe import Markup

from bot.commands import COMMANDS
from bot.facts import Say
from bot.fronts.pages.asking import questions_of
from bot.fronts.pages.edition import Edition
from bot.language.quantities import Units
from bot.preferences import FIRST, Preferences

__all__ = [
    "MOST_CHARACTERS",
    "NOT_KEPT",
    "TRY",
    "PageFault",
    "PageMost",
    "PageTooLong",
    "PageWait",
    "TryPage",
]

MOST_CHARACTERS = 2000
NOT_KEPT = {"Cache-Control": "no-store"}
TRY = "try.html"


@dataclass(frozen=True, slots=True)
class PageTooLong:
    """How long a question was, and may be."""

    count: int
    most: int


@dataclass(frozen=True, slots=True)
class PageMost:
    """How long a question may be."""

    most: int


@dataclass(frozen=True, slots=True)
class PageWait:
    """When the next question may be asked."""

    seconds: int


@dataclass(frozen=True, slots=True)
class PageFault:
    """The number by which the log knows what broke."""

    number: str


@dataclass(frozen=True, slots=True)
class TryPage:
    """What was asked on the page to try questions, in which language and with which unit first."""

    edition: Edition
    question: str
    units: str

    @property
    def preferences(self) -> Preferences:
        """Return how to answer: in the language of the folder, at first in that of the question."""
        chosen = Units(self.units) if self.units in set(Units) else None
        language = None if self.edition.language == FIRST else self.edition.language
        return Preferences(units=chosen, forced_units=chosen, language=language)

    def shown(
        self,
        told: Say | None = None,
        status: int = 200,
        retry_after: int = 0,
        answer: Markup | None = None,
    ) -> web.Response:
        """Return the page with what is told of the question, or its answer."""
        asked = {"q": self.question, "units": self.units}
        html = self.edition.page(
            "try.html",
            f"{TRY}?{urlencode(asked)}" if self.question else TRY,
            question=self.question,
            units=self.units,
            told=told and self.edition.say(told),
            answer=answer,
            questions=questions_of((c for c in COMMANDS if c.who == "anyone"), self.edition),
            most=MOST_CHARACTERS,
        )
        headers = dict(NOT_KEPT)
        if retry_after:
            headers["Retry-After"] = str(retry_after)
        return web.Response(text=html, content_type="text/html", status=status, headers=headers)
