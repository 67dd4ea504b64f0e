"""An answer that somebody called wrong: the values of its question, no text, no person."""

from datetime import date

from bot.saved.values import Kept

__all__ = ["MOST_WRONGS", "Wrong"]

MOST_WRONGS = 200


class Wrong(Kept):
    """A question by its name, the values that it was asked with, and the day."""

    day: date
    command: str
    given: dict[str, str]
