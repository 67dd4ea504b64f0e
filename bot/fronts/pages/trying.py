"""The page where a question is typed and answered, in the language of its folder."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from urllib.parse import urlencode

from aiohttp import web
from markupsafe import Markup

from bot.ask import ask
from bot.commands import COMMANDS
from bot.dialogue import START, Dialogue, known_told
from bot.facts import Say
from bot.fronts.pages.asking import Asked, by_topic, questions_of
from bot.fronts.pages.edition import Edition
from bot.language.quantities import Units
from bot.offering import names_offered
from bot.preferences import FIRST, Preferences
from bot.reply import Reply

__all__ = [
    "MOST_CARRIED",
    "MOST_CHARACTERS",
    "NOT_KEPT",
    "SHEET",
    "TRY",
    "PageFault",
    "PageMost",
    "PageTooLong",
    "PageWait",
    "TryPage",
]

MOST_CHARACTERS = 2000
MOST_CARRIED = 3000
"""The longest conversation that a page carries to the next one."""
NOT_KEPT = {"Cache-Control": "no-store"}
_GENERAL = "general"
TRY = "try.html"
SHEET = "sheet.html"


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
    before: str = ""

    @property
    def dialogue(self) -> Dialogue:
        """Return the conversation that the page carried; the beginning of one where it cannot."""
        if not self.before or len(self.before) > MOST_CARRIED:
            return START
        try:
            return Dialogue.unpacked(self.before)
        except ValueError:
            return START

    @property
    def preferences(self) -> Preferences:
        """Return how to answer: in the language of the folder, at first in that of the question."""
        chosen = Units(self.units) if self.units in set(Units) else None
        language = None if self.edition.language == FIRST else self.edition.language
        return Preferences(units=chosen, forced_units=chosen, language=language)

    @property
    def address(self) -> str:
        """Return where the question is asked, without what was asked before it."""
        return f"{TRY}?{urlencode({'q': self.question, 'units': self.units})}"

    def replied(self) -> Reply:
        """Return the answer to the question by itself."""
        return ask(self.question, self.preferences)

    def _questions(self) -> Iterator[tuple[str, list[Asked]]]:
        """Give what can be asked by what it is about; what is looked up comes last."""
        topics = by_topic(command for command in COMMANDS if command.who == "anyone")
        general = topics.pop(_GENERAL)
        for topic, some in topics.items():
            yield self.edition.say(Say.of("form", "topic", topic)), questions_of(some, self.edition)
        yield self.edition.say(Say("page-look-up")), questions_of(general, self.edition)

    def sheet_of(self, reply: Reply) -> str:
        """Return where the care sheet of an answer is; nothing where it has none."""
        if reply.sheet is None:
            return ""
        return f"{SHEET}?{urlencode({'q': reply.asked, 'units': self.units})}"

    def sheet(self, reply: Reply, picture: Markup, lines: Sequence[str]) -> web.Response:
        """Return the care sheet of an answer as a page to print, ``lines`` beside its picture."""
        asked = f"{SHEET}?{urlencode({'q': self.question, 'units': self.units})}"
        html = self.edition.page("sheet.html", asked, reply=reply, picture=picture, lines=lines)
        return web.Response(text=html, content_type="text/html", headers=NOT_KEPT)

    def shown(
        self,
        told: Say | None = None,
        status: int = 200,
        retry_after: int = 0,
        answer: Markup | None = None,
        after: Dialogue = START,
    ) -> web.Response:
        """Return the page with what is told of the question, or its answer.

        ``after`` is the conversation that the page carries on; nothing of it is kept here.
        """
        packed = after.packed() if after != START else ""
        carried = {"units": self.units, "with": packed if len(packed) <= MOST_CARRIED else ""}
        names = names_offered(after.offers, self.edition.language)
        offers = [
            (name, f"{TRY}?{urlencode({'q': offer.line(), **carried})}")
            for name, offer in zip(names, after.offers, strict=True)
        ]
        html = self.edition.page(
            "try.html",
            self.address if self.question else TRY,
            question=self.question,
            units=self.units,
            told=told and self.edition.say(told),
            answer=answer,
            before=carried["with"],
            known=[self.edition.say(say) for say in known_told(after)][:-1],
            offers=offers,
            questions=tuple(self._questions()),
            most=MOST_CHARACTERS,
        )
        headers = dict(NOT_KEPT)
        if retry_after:
            headers["Retry-After"] = str(retry_after)
        return web.Response(text=html, content_type="text/html", status=status, headers=headers)
