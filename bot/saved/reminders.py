"""Reminders as values: what about, when, how often, and what became of them."""

from datetime import UTC, datetime, timedelta
from enum import StrEnum
from typing import Annotated
from zoneinfo import ZoneInfo

from pydantic import AfterValidator, AwareDatetime, Field

from bot.saved.targets import TargetMoved
from bot.saved.values import Kept, Name, Zone

__all__ = [
    "ASKED_FOR",
    "MOST_DAYS",
    "MOST_REMINDERS",
    "About",
    "Due",
    "Reminder",
    "ReminderExport",
    "State",
    "Trouble",
    "next_due",
]

MOST_REMINDERS = 25
MOST_DAYS = 3 * 366


class About(StrEnum):
    """What a reminder is about.

    A keeper asks for the first four. By itself come ADVISED (helpers advised something), CASE (to a
    helper: something moved in a case), ENDED (a case was ended), RETARGET (targets changed), and
    SHARED in the channel of the helpers.
    """

    METER = "meter"
    TUBE = "tube"
    SEASON = "season"
    CHECK = "check"
    ADVISED = "advised"
    CASE = "case"
    ENDED = "ended"
    RETARGET = "retarget"
    SHARED = "shared"


ASKED_FOR = (About.METER, About.TUBE, About.SEASON, About.CHECK)
"""What a keeper can ask to be reminded of."""


def _asked_for(about: About) -> About:
    if about not in ASKED_FOR:
        raise ValueError(f"one of: {', '.join(ASKED_FOR)}")
    return about


class State(StrEnum):
    """Where a reminder stands: SENDING is claimed by a process, DONE was delivered."""

    WAITING = "waiting"
    SENDING = "sending"
    DONE = "done"
    STOPPED = "stopped"


class Trouble(StrEnum):
    """Why something cannot be delivered or shown."""

    NONE = ""
    DM_CLOSED = "dm closed"
    CHANNEL_GONE = "channel gone"
    NO_RIGHT = "no right"
    REFUSED = "refused"
    PINS_FULL = "pins full"
    NO_PIN_RIGHT = "no pin right"
    NO_FILE_RIGHT = "no file right"


class Reminder(Kept):
    """A reminder of one keeper; ``channel`` None is by direct message.

    ``occurrence`` counts the deliveries of a repeated one. ``case`` is the number of the case that
    it is about, ``moved`` are the targets.
    """

    id: int
    keeper: int
    about: About
    enclosure: Name | None
    due: datetime
    zone: Zone
    every_days: int | None
    server: int | None
    channel: int | None
    occurrence: int
    state: State
    trouble: Trouble
    case: int | None = None
    moved: tuple[TargetMoved, ...] = ()


class Due(Kept):
    """A reminder claimed for delivery.

    ``unsure`` says that another process claimed it before and may have delivered it; ``failures``
    is how often it could not be sent.
    """

    reminder: Reminder
    unsure: bool
    failures: int = 0


class ReminderExport(Kept):
    """A reminder in a keeper's file; it comes back as a direct message."""

    about: Annotated[About, AfterValidator(_asked_for)]
    enclosure: Name | None = None
    due: AwareDatetime
    zone: Zone
    every_days: int | None = Field(default=None, ge=1, le=MOST_DAYS)


def next_due(due: datetime, zone: str, every_days: int, now: datetime) -> datetime:
    """Return the first repetition after now, at the same time of day in the zone.

    >>> from datetime import UTC
    >>> winter = datetime(2026, 3, 1, 8, 0, tzinfo=UTC)
    >>> next_due(winter, "Europe/Berlin", 30, winter).isoformat()
    '2026-03-31T07:00:00+00:00'
    """
    local = due.astimezone(ZoneInfo(zone))
    missed = max(0, (now - due).days // every_days)
    following = local + timedelta(days=missed * every_days)
    while following.astimezone(UTC) <= max(now, due):
        following += timedelta(days=every_days)
    return following.astimezone(UTC)
