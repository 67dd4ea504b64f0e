"""The log of a group: what its moderators changed."""

from collections.abc import Sequence
from datetime import datetime

from bot.saved.values import Kept

__all__ = ["Change", "animals_of_board", "board_animals", "board_name"]

_BETWEEN = "; "
_NO_ANIMALS = "shown"


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


def board_name(topic: str, channel: int) -> str:
    """Return what the log calls a board."""
    return f"{topic} in {channel}"


def board_animals(slugs: Sequence[str]) -> str:
    """Return what the log tells of a board that is wanted: its animals, or that it is there.

    >>> board_animals(["boa", "corn-snake"]), board_animals([])
    ('boa; corn-snake', 'shown')
    """
    return _BETWEEN.join(slugs) or _NO_ANIMALS


def animals_of_board(logged: str) -> tuple[str, ...]:
    """Return the animals of a board that the log tells of: no key holds a semicolon.

    >>> animals_of_board("boa; corn-snake"), animals_of_board("shown")
    (('boa', 'corn-snake'), ())
    """
    return () if logged == _NO_ANIMALS else tuple(logged.split(_BETWEEN))
