"""The log of a group: what its moderators changed."""

from datetime import datetime

from bot.saved.values import Kept

__all__ = ["Change"]


class Change(Kept):
    """One line of the log: what a moderator changed, from what to what, and when.

    ``who`` is the moderator's number, or None once that person asked to be forgotten.
    """

    at: datetime
    who: int | None
    what: str
    name: str
    before: str
    after: str
