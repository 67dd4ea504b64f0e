"""Limits that were passed, as hazards of the table."""

from collections.abc import Iterable, Iterator
from typing import Literal

from bot.reply import Alarm
from calc.limits import Due, LimitName, Limits, Met, Passed, passed

__all__ = ["alarms_past", "merged"]

_KEYS = {
    LimitName.SURFACE: "box_too_hot",
    LimitName.WARM_AIR: "box_too_hot",
    LimitName.COOLEST_AIR: "box_too_hot",
    LimitName.WATER: "water_too_hot",
    LimitName.ROOM: "power_cut_hot",
    LimitName.NIGHT: "night_too_cold",
    LimitName.COLD_DAY: "too_cold",
    LimitName.COLD_WATER: "too_cold",
    LimitName.CONTACT: "no_thermostat",
    LimitName.WOOD: "touching",
    LimitName.UVI: "uv_too_strong",
    LimitName.TUBE: "uv_too_strong",
    LimitName.LIGHT: "light_all_day",
}
# Without an urgency it is the hazard's own, which may be now.
_SOONEST = ("now", "", "today", "this week", "change")


def alarms_past(
    limits: Limits, met: Met, words: str = "", *, asked: bool = False
) -> tuple[Alarm, ...]:
    """Return the hazards of the limits that readings or results pass, each once.

    ``words`` are the asker's own; ``asked``: it is only planned.

    >>> from calc.limits import any_limits
    >>> [alarm.key for alarm in alarms_past(any_limits(), Met(surface_c=70.0))]
    ['box_too_hot']
    """
    return merged(_alarm(past, words, asked=asked) for past in passed(limits, met))


def merged(alarms: Iterable[Alarm]) -> tuple[Alarm, ...]:
    """Return alarms with each hazard once, as urgent as the most urgent of it."""
    return tuple(_merged(alarms))


def _merged(alarms: Iterable[Alarm]) -> Iterator[Alarm]:
    by_key: dict[str, list[Alarm]] = {}
    for alarm in alarms:
        by_key.setdefault(alarm.key, []).append(alarm)
    for same in by_key.values():
        yield min(same, key=lambda a: (a.asked, _SOONEST.index(a.urgency)))


def _alarm(past: Passed, words: str, *, asked: bool) -> Alarm:
    urgency: Literal["now", "today"] = "now" if past.due is Due.NOW else "today"
    return Alarm(key=_KEYS[past.name], words=words, asked=asked, urgency=urgency)
