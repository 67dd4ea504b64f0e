"""What stands on buttons and lists, in the asker's language."""

from dataclasses import dataclass
from typing import Final

from bot.facts import Say
from bot.language.units import Units
from bot.saying.voice import voice

__all__ = ["PageTitle", "PagesFromTo", "cut", "label"]

_LONGEST: Final = 80


@dataclass(frozen=True, slots=True)
class PageTitle:
    """A page of the guide that a button opens."""

    title: str


@dataclass(frozen=True, slots=True)
class PagesFromTo:
    """So many pages of the guide in one list."""

    first: int
    last: int


def label(say: Say, language: str) -> str:
    """Return what stands on a button."""
    return cut(voice(language, Units.CM).text(say), _LONGEST)


def cut(text: str, most: int) -> str:
    """Return a text, or its beginning where it is longer."""
    return text if len(text) <= most else f"{text[: most - 1]}…"
