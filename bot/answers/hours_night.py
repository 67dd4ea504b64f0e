"""Lights that burn through the night: whether they do, and what is asked about them."""

from datetime import time

from bot.answers.heat_parts import Kept
from calc.timer import LightTimes

__all__ = ["at_night", "burns_at_night", "clock"]

# Every place that people live in is dark then, or sleeps [min after midnight].
_DEEPEST_NIGHT = range(60, 240)
_DAY_MIN = 24 * 60
_MORNING = range(4, 13)


def burns_at_night(times: LightTimes) -> bool:
    """Say whether lights burn in the middle of the night."""
    on, lit = 60 * times.on.hour + times.on.minute, round(60.0 * times.hours)
    return any((minute - on) % _DAY_MIN < lit for minute in _DEEPEST_NIGHT)


def at_night(times: LightTimes, kept: Kept) -> str:
    """Return what is asked of who lights the night: whether that is meant."""
    night = f"lights from {clock(times.on)} to {clock(times.off)} burn through the night"
    morning = f"ask hours with on:{clock(_morning(times.on))}"
    if kept.animal.basking:
        return (
            f"Is that meant? {kept.whom[0].upper()}{kept.whom[1:]} is awake by day, and {night}. "
            f"12 hours by day are a fine answer: {morning}."
        )
    return (
        f"Is that meant? The {night}: right only where its room stays dark by day, so that it has "
        f"12 dark hours all the same. Otherwise {morning}."
    )


def _morning(on: time) -> time:
    """Return when they may go on instead: then, half a day later where that is a morning, or 8."""
    half_a_day_later = on.replace(hour=(on.hour + 12) % 24)
    mornings = (start for start in (on, half_a_day_later) if start.hour in _MORNING)
    return next(mornings, time(8))


def clock(moment: time) -> str:
    """Return a time of day, such as ``08:00``."""
    return f"{moment:%H:%M}"
