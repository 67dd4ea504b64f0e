"""What tubes of the asker's group lose in a month, beside an age or too few readings.

Words: ``decline.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from math import log

from bot.facts import Say, Share, share
from bot.layered import Row
from bot.saved.group import Own

__all__ = ["GroupPace", "group_pace", "pace_rows"]

_MONTH_DAYS = 30.0
_FARTHEST_DAYS = 365.0


@dataclass(frozen=True, slots=True)
class GroupPace:
    """What a tube of the group loses in 30 days; ``below``: when the asker's would be too weak."""

    loss: Share
    tubes: int
    keepers: int
    newest: date
    below: date | None


def group_pace(
    own: Own, read: tuple[date, float] | None = None, low_uvi: float = 0.0
) -> GroupPace | None:
    """Return the pace of the group's tubes; ``read`` is the last reading and its day."""
    found = own.fading
    if found is None:
        return None
    below = None
    if read is not None and 0.0 < low_uvi < read[1]:
        days = _MONTH_DAYS * log(low_uvi / read[1]) / log(found.month)
        below = read[0] + timedelta(days=round(days)) if days <= _FARTHEST_DAYS else None
    return GroupPace(
        loss=share(1.0 - found.month, (max(0.0, 1.0 - found.high), 1.0 - found.low)),
        tubes=found.lamps,
        keepers=found.keepers,
        newest=found.newest,
        below=below,
    )


def pace_rows(pace: GroupPace | None) -> Iterator[Row]:
    """Yield what the group's tubes lose, and when the asker's would be too weak at that pace."""
    if pace is None:
        return
    yield Row(Say("decline-label-group"), Say("decline-group", pace))
    if pace.below is not None:
        yield Row(Say("decline-label-group-below"), Say("decline-group-below", pace))
