"""The questions as the site lists them: what each answers and takes, in the edition's words."""

from collections.abc import Iterable
from dataclasses import dataclass

from bot import guide
from bot.command import Command
from bot.commands import ALL_COMMANDS, COMMANDS, STORED_COMMANDS
from bot.facts import Say
from bot.fronts.pages.edition import Edition
from bot.menu import MODULES, about_option, about_question
from bot.queries.query import QueryOption

__all__ = ["Asked", "by_topic", "questions_in_parts", "questions_of"]

# What may be asked about, the simplest first: the rooms of the questions.
_TOPICS = ("general", "setup", "uv", "heat", "light")


@dataclass(frozen=True, slots=True)
class Asked:
    """A question with what it answers, what it takes, and the guide pages that go with it."""

    command: Command
    summary: str
    options: tuple[tuple[QueryOption, str], ...]
    pages: tuple[guide.Page, ...]


def questions_of(commands: Iterable[Command], edition: Edition) -> list[Asked]:
    """Return questions in the words of an edition."""
    return [_asked(command, edition) for command in commands]


def by_topic(commands: Iterable[Command]) -> dict[str, tuple[Command, ...]]:
    """Return the questions of whole options by what they are about."""
    asked = [command for command in commands if command.route is None]
    topics = {topic: [c for c in asked if _room(c) == topic] for topic in _TOPICS}
    return {topic: tuple(some) for topic, some in topics.items() if some}


def _room(command: Command) -> str:
    return MODULES[command.name].split(".")[2]


def questions_in_parts(edition: Edition) -> list[tuple[str, list[Asked]]]:
    """Return all questions by who may ask them."""
    parts = {
        Say("page-part-anyone"): [c for c in COMMANDS if c.who == "anyone"],
        Say("page-part-kept"): [c for c in STORED_COMMANDS if c.who == "anyone"],
        Say("page-part-moderator"): [c for c in ALL_COMMANDS if c.who == "moderator"],
    }
    return [(edition.say(part), questions_of(listed, edition)) for part, listed in parts.items()]


def _asked(command: Command, edition: Edition) -> Asked:
    return Asked(
        command,
        edition.say(about_question(command.name)),
        tuple(
            (option, edition.say(about_option(command.name, option.name)))
            for option in command.query.options()
        ),
        tuple(guide.page(page, edition.language) for page in command.guide),
    )
