"""What becomes public in a group: who may show an answer to all, how often, and what was shown."""

from collections.abc import Iterable
from datetime import datetime, timedelta
from enum import Enum, StrEnum, auto

from pydantic import Field

from bot.saved.values import Kept

__all__ = [
    "EVERYWHERE",
    "IN_CHANNEL",
    "KEPT_FOR",
    "MOST_AN_HOUR",
    "MOST_PLACES",
    "USUAL_MOST",
    "WITHIN",
    "Posted",
    "PublicRule",
    "Reached",
    "Share",
    "Who",
    "in_force",
]

EVERYWHERE = 0
"""Stands for a channel where a rule holds in all channels that have none of their own."""
USUAL_MOST = 20
MOST_AN_HOUR = 100
IN_CHANNEL = 3
"""How many times as much may be posted in a channel as by one person."""
WITHIN = timedelta(hours=1)
KEPT_FOR = timedelta(days=90)
MOST_PLACES = 500


class Who(StrEnum):
    """Who may show an answer to everybody."""

    EVERYBODY = "everybody"
    HELPERS = "helpers"
    MODERATORS = "moderators"


class PublicRule(Kept):
    """Who may post publicly in a place, and at most how often an hour; None: not said there."""

    who: Who | None = None
    most: int | None = Field(default=None, ge=1, le=MOST_AN_HOUR)


def in_force(rules: Iterable[PublicRule | None]) -> tuple[Who, int]:
    """Return who may post and how often, of the rules of a place, the nearest first."""
    told = [rule for rule in rules if rule is not None]
    who = next((rule.who for rule in told if rule.who is not None), Who.EVERYBODY)
    most = next((rule.most for rule in told if rule.most is not None), USUAL_MOST)
    return who, most


class Posted(Kept):
    """A public post: no text; ``who`` is None once that person asked to be forgotten."""

    at: datetime
    who: int | None
    channel: int
    command: str
    pings: int = Field(ge=0)


class Share(Enum):
    """Whose share of an hour is used up."""

    PERSON = auto()
    CHANNEL = auto()


class Reached(Kept):
    """A share that is used up, and when the next post is allowed."""

    share: Share
    again_at: datetime
