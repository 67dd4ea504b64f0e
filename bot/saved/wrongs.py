"""An answer that somebody called wrong: the values of its question, no text, no person."""

from datetime import date
from typing import Literal

from pydantic import Field

from bot.saved.values import Kept

__all__ = ["MOST_WRONGS", "Wrong", "WrongExport"]

MOST_WRONGS = 200


class Wrong(Kept):
    """A question by its name, the values that it was asked with, and the day."""

    day: date
    command: str
    given: dict[str, str]


class WrongExport(Kept):
    """All that was called wrong in a group, as a file to read."""

    noonstone: Literal["wrong"] = "wrong"
    version: Literal[1] = 1
    wrongs: tuple[Wrong, ...] = Field(default=(), max_length=MOST_WRONGS)
